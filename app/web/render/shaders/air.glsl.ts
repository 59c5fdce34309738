import { farthestMetres } from '../../../../core/trace/through-air.ts';

/** Haze between all things, twin of core/world/air.ts and core/trace/through-air.ts. HAS_HAZE (0 or 1) says whether there is any. */
export const airGlsl = /* glsl */ `
#if HAS_HAZE == 1
// scattered per metre, and how high it reaches
uniform vec2 haze;
#endif

// Share of light that gets through so much haze straight.
float throughAir(float metres) {
#if HAS_HAZE == 1
  return exp(-haze.x * metres);
#else
  return 1.0;
#endif
}

// How far a way goes in the haze when it meets nothing.
float metresInAir(vec3 origin, vec3 direction) {
#if HAS_HAZE == 1
  const float farthest = ${farthestMetres.toFixed(1)};
  float under = haze.y - origin.y;
  return under <= 0.0 ? 0.0 : direction.y > 1e-6 ? min(under / direction.y, farthest) : farthest;
#else
  return 0.0;
#endif
}
`;
