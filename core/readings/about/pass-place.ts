import { type About, commonPractice } from '../../units/about.ts';

/** Where a pass stands, and who holds it. */
export const aboutPassPlace = {
  'off-axis': {
    name: 'Off the axis',
    says: 'How far the lamp stands from the camera’s own line of sight, as the target sees it. Small: flat. 60° to 120°: side light, form and texture. Near 180°: light from behind.',
    rule: 'The angle at the target between the ways to the camera and to the lamp, height and all: 0° at the camera, 90° square to it, 180° behind.',
    source: `Angles: geometry. What they do to form: ${commonPractice.toLowerCase()}`,
  },
  elevation: {
    name: 'Elevation',
    says: 'How far the lamp stands over the level of its target, or under it.',
    rule: 'angle = arctan(height over the target ÷ level distance).',
    source: 'Geometry.',
  },
  lens: {
    name: 'The lens',
    says: 'Whether the lens sees the bare lamp, or what hides it.',
    rule: 'Rays from the lens to five places of the lamp, at nine moments where it moves. One that arrives inside the picture counts as seen; whoever holds the lamp hides it too.',
    source: 'Geometry, by rays.',
  },
  walk: {
    name: 'The walk there',
    says: 'How long you walk from the pass held before, or from the camera where a frame is set otherwise than the one before, and how much time is to spare.',
    rule: 'seconds = shortest way round what stands there × 1.2 ÷ your speed. To spare = seconds between the passes − those. Between frames the delay and the real shutter times count.',
    source: 'The fifth for detours and the speeds in the dark: common practice, no published source.',
  },
  holder: {
    name: 'Holding it',
    says: 'How long the lens sees whoever holds the lamp, lit or not.',
    rule: 'A body, upright, stands behind the lamp on what lies under it there; rays from the lens look for it at each moment. Share = seconds seen ÷ seconds that the shutter is open.',
    source: `Geometry, by rays. Size of the body: ${commonPractice.toLowerCase()}`,
  },
} as const satisfies Record<string, About>;
