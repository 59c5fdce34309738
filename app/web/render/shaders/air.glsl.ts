/** Haze between all things, twin of core/trace/through-air.ts. HAS_HAZE (0 or 1) says whether there is any. */
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
`;
