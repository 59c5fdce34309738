/** What holds wherever light is painted, whatever the readings say. */
export const Safety = () => (
  <p className="notes safety quiet">
    Try it in daylight first. Keep beams off roads, aircraft, people’s eyes and wildlife, and poles away from power
    lines; ask the owner; local rules decide. Rules about darkness and about lighting differ from place to place, and
    may forbid lamps: ask locally.
  </p>
);
