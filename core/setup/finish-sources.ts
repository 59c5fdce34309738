/**
 * Where the ranges of the finish presets are published. "From memory" where the text was not at hand; the others were
 * read. Albedos are shares of all sunlight, most of it not visible: leaves and soil return more of that than of light.
 */
export const finishSources = {
  okeStone: 'from memory: T. R. Oke, Boundary Layer Climates (1987), albedo of urban materials: stone 20 to 35 %',
  okeBrick:
    'from memory: T. R. Oke, Boundary Layer Climates (1987), albedo of urban materials: brick 20 to 40 %; K. H. Cook, Climate Dynamics (2013), table 5.1: brick 30 %',
  okeWhite:
    'from memory: T. R. Oke, Boundary Layer Climates (1987), albedo of urban materials: white paint and whitewash 50 to 90 %',
  okeBlack: 'from memory: T. R. Oke, Boundary Layer Climates (1987), albedo of urban materials: black paint 2 to 15 %',
  okeThatch: 'from memory: T. R. Oke, Boundary Layer Climates (1987), albedo of urban materials: thatch 15 to 20 %',
  okeGrass: 'from memory: T. R. Oke, Boundary Layer Climates (1987), albedo of natural surfaces: grass 16 to 26 %',
  okeDesert:
    'from memory: T. R. Oke, Boundary Layer Climates (1987), albedo of natural surfaces: desert 20 to 45 %; K. H. Cook, Climate Dynamics (2013), table 5.1: dry sand 40 %',
  okeWater:
    'from memory: T. R. Oke, Boundary Layer Climates (1987), albedo of natural surfaces: water under a high sun 3 to 10 %; K. H. Cook, Climate Dynamics (2013), table 5.1: 8 %',
  okeIce:
    'from memory: T. R. Oke, Boundary Layer Climates (1987), albedo of natural surfaces: ice 20 to 45 %; K. H. Cook, Climate Dynamics (2013), table 5.1: 35 %',
  okeAsphalt:
    'from memory: T. R. Oke, Boundary Layer Climates (1987), albedo of urban materials: asphalt 5 to 20 %; Study on surface heat budget of various pavements, Adv. Mater. Sci. Eng. (2012) 523051, table 3: 7 to 8 %',
  cookDrySoil: 'K. H. Cook, Climate Dynamics (2013), table 5.1: albedo of dry soil 22 to 33 %',
  cookWetSoil: 'K. H. Cook, Climate Dynamics (2013), table 5.1: albedo of wet soil 6 to 13 %',
  cookWetSand:
    'K. H. Cook, Climate Dynamics (2013), table 5.1: albedo of wet sand 25 %; a fifth of it taken as its spread, no published source',
  cookFreshSnow:
    'K. H. Cook, Climate Dynamics (2013), table 5.1: albedo of fresh snow 70 to 90 %; of visible light nearly all, H. W. O’Brien and R. H. Munis, CRREL Research Report 332 (1975)',
  cookOldSnow:
    'K. H. Cook, Climate Dynamics (2013), table 5.1: albedo of old snow 45 to 60 %; clean old snow returns over 80 % of visible light, O’Brien and Munis, CRREL Research Report 332 (1975)',
  solarSlate:
    'tables of solar absorptance, studylib.es document 7898452, table 3: slate, silver grey to dark grey, 79 to 90 % absorbed',
  solarMarble:
    'tables of solar absorptance, studylib.es document 7898452, table 3: marble, white to veined, 44 to 60 % absorbed; the nearest to limestone in it',
  solarZinc:
    'tables of solar absorptance, studylib.es document 7898452, table 3: galvanised iron, polished to new, 34 to 64 % absorbed',
  solarRust:
    'tables of solar absorptance, studylib.es document 7898452, table 3: rusted iron 96 % absorbed; from memory: T. R. Oke, Boundary Layer Climates (1987): corrugated iron 10 to 16 %',
  concrete:
    'Concrete Society, Reflectance of concrete (concrete.org.uk, nugget 916): textured 25 %, smooth grey 40 % of light',
  wetStone:
    'half of dry stone, as wetting darkens it: from memory: J. Lekner and M. C. Dorf, Why some things are darker when wet, Applied Optics 27 (1988) 1278',
  wetLightStone:
    'half to two thirds of light stone, as wetting darkens it: from memory: J. Lekner and M. C. Dorf, Why some things are darker when wet, Applied Optics 27 (1988) 1278',
  wetAsphalt:
    'half of dry asphalt, as wetting darkens it: from memory: J. Lekner and M. C. Dorf, Why some things are darker when wet, Applied Optics 27 (1988) 1278',
  basalt: 'from memory: A. M. Baldridge and others, The ASTER spectral library 2.0 (2009): solid basalts 5 to 15 %',
  lightWood: 'from memory: IESNA Lighting Handbook, reflectance of materials: light oak and birch 25 to 50 % of light',
  darkWood:
    'from memory: IESNA Lighting Handbook, reflectance of materials: walnut, mahogany and dark oak 5 to 15 % of light',
  greyWood:
    'from memory: IESNA Lighting Handbook, reflectance of materials: dark oak 10 % to light oak 35 % of light; weathered timber lies between',
  bark: 'from memory: J. Juola and others, Multiangular spectra of tree bark, Silva Fennica 54 (2020) 10331: pine and spruce 5 to 25 % of light',
  leaves:
    'from memory: E. A. Walter-Shea and J. M. Norman, Leaf optical properties (1991): 5 to 15 % of light returned',
  deadLeaves:
    'from memory: A. M. Baldridge and others, The ASTER spectral library 2.0 (2009): dry leaves and litter 10 to 30 %',
  lawn: 'from memory: IESNA Lighting Handbook, outside surfaces: dark green grass 6 % of light; common practice: a lawn meters as mid-grey, 18 %',
  gravel:
    'from memory: IESNA Lighting Handbook, outside surfaces: gravel 13 % of light; Oke, Boundary Layer Climates (1987): stone up to 35 %',
  steel:
    'from memory: CRC Handbook of Chemistry and Physics, reflectance of metals: iron and steel 50 to 65 % of light',
  cloth: 'no published source: our own value for thin coloured cloth',
  clothes:
    'from memory: F. C. Smith, Reflection factors and revealing power, Trans. Illum. Eng. Soc. London (1938): half of winter clothes under 5 %, few over 20 %',
  lightClothes: 'no published source: our own value for pale cotton and wool',
  skin: 'from memory: C. C. Cooksey, D. W. Allen and B. K. Tsai, Reference data set of human skin reflectance, J. Res. NIST 122 (2017) 26; lightness 30 to 72, so 6 to 44 % of light',
} as const;

export type FinishSource = keyof typeof finishSources;
