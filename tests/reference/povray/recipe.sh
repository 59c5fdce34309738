#!/bin/sh
# Makes mask.png anew: 255 where the lamp lights what the camera sees, 0 in shadow and on the sky. One ray a pixel.
# Needs POV-Ray 3.7 (Debian: povray) and Netpbm (Debian: netpbm).
set -eu
cd "$(dirname "$0")"
povray scene.pov -V +W320 +H180 -A -D -GA File_Gamma=1 +FP +O- | ppmtopgm | pnmtopng -force -compression 9 >mask.png
