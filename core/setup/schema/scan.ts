import { z } from 'zod';
import { flag, id, metres, name, whole } from './fields.ts';

/** Most triangles of one scan, and most letters that its data may have. */
export const maxScanTriangles = 300_000;
const maxDataLetters = 24_000_000;

/** A mesh brought in from a file; parts of kind "scan" show it. `core/scan` packs and unpacks the data. */
export const scan = z
  .strictObject({
    id,
    name,
    fileName: name.describe('the file that it came from'),
    triangleCount: whole(1, maxScanTriangles, 'how many triangles'),
    vertexCount: whole(3, 3 * maxScanTriangles, 'how many distinct corners'),
    sizeMetres: z
      .tuple([metres(0, 5000, 'east to west'), metres(0, 5000, 'north to south'), metres(0, 5000, 'height')], {
        error: 'must be three numbers: [east to west, north to south, height] in metres',
      })
      .describe('size of the box round it; it stands on the ground with its middle over the origin'),
    hasColour: flag('whether each triangle has a colour of its own'),
    data: z
      .string({ error: 'must be a text in base64' })
      .max(maxDataLetters, `must be at most ${maxDataLetters} letters`)
      .regex(/^[A-Za-z0-9+/]+={0,2}$/, 'must be a text in base64')
      .describe('corners as 16-bit numbers over the box, triangles, colours; deflated, in base64'),
  })
  .describe('a scan of a real thing');
