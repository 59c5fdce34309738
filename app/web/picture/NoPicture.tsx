/** Said in the place of pictures where the browser can't draw them. */
export const NoPicture = () => (
  <p className="no-picture">
    This browser can’t draw the picture: it has no WebGL2, or not enough of it. The ground plan, the readings and the
    cautions work all the same. Try a current browser, or turn on hardware acceleration.
  </p>
);
