// An invented yard under one point lamp, for tests/reference/independent-shadows.test.ts. The same numbers stand there.
// A document's [east, north, up] is right-handed; POV-Ray's <x, y, z> with y up is left-handed. Taking east as x, up as y
// and north as z crosses over without mirroring the picture. E() is the only place that does so.
#version 3.7;
global_settings { assumed_gamma 1 }

#macro E(East, North, Up) <East, Up, North> #end

// so bright that a surface is full white at any light at all: lit = 255, unlit = 0
light_source { E(-5, 0.8, 3.1) rgb 1e7 }
background { rgb 0 }
#default { texture { pigment { rgb 1 } finish { ambient 0 emission 0 diffuse 1 } } }

// 24 mm behind a sensor of 36 x 20.25 mm
camera {
  perspective
  location E(0.5, -6, 3)
  direction z
  up y * 20.25 / 24
  right x * 36 / 24
  look_at E(0.3, 1, 0.7)
}

// stands on its place; roll leans its top to the east, tilt to the north, turn goes clockwise seen from above
#macro Block(Width, Depth, Height, Roll, Tilt, Turn, Place)
  box { <-Width / 2, 0, -Depth / 2>, <Width / 2, Height, Depth / 2>
    rotate -Roll * z rotate Tilt * x rotate Turn * y translate Place }
#end

plane { y, 0 }
Block(1.2, 0.8, 1.5, 0, 0, 0, E(-2.2, 2, 0))
Block(1.6, 0.5, 0.9, 0, 0, 35, E(1.6, -1.2, 0))
Block(0.5, 0.4, 2.4, 12, -9, -20, E(3.1, 3.2, -0.1))
cylinder { E(0, 0.5, 0), E(0, 0.5, 1.1), 0.55 }
cylinder { E(-3.4, -0.6, 0), E(-3.4, -0.6, 2.9), 0.06 }
cone { E(0.9, 4, 0), 0.9, E(0.9, 4, 1.8), 0.35 }
sphere { E(-0.9, -2.1, 0.45), 0.45 }
sphere { E(0, 0.5, 1.5), 0.4 }
sphere { E(4.6, 0.4, 0.3), 0.7 }
cone { E(2.9, 0.9, 0), 0.6, E(2.9, 0.9, 1.7), 0 }
