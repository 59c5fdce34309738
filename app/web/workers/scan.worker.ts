import { encodeScan } from '../../../core/scan/scan-code.ts';
import { scanSizeMetres } from '../../../core/scan/scan-steps.ts';
import { type Placing, placeScan } from '../scans/place-scan.ts';
import { readScan } from '../scans/read-scan.ts';
import { ScanError } from '../scans/scan-error.ts';
import type { ScannedMesh } from '../scans/scanned-mesh.ts';
import { summarizeScan } from '../scans/summarize-scan.ts';
import { workerTools } from '../scans/worker-tools.ts';
import type { ScanAnswer, ScanRequest } from './scan-messages.ts';

// a scan is read from its own bytes alone; should a library ever ask for more, it gets nothing
const refuse = () => {
  throw new Error('nothing is fetched for a scan');
};
Object.assign(self, { fetch: refuse, XMLHttpRequest: refuse, WebSocket: refuse, EventSource: refuse });

let mesh: ScannedMesh | null = null;

const answer = (message: ScanAnswer) => self.postMessage(message);

/** Largest side that a scan of a setup may have. */
const mostMetres = 5000;

const placed = (placing: Placing) => {
  if (!mesh) throw new ScanError('It has not been read yet');
  const triangles = placeScan(mesh, placing);
  const sizeMetres = scanSizeMetres(triangles.positions);
  return { triangles, sizeMetres };
};

const respond = async (request: ScanRequest): Promise<void> => {
  switch (request.kind) {
    case 'read': {
      const bytes = new Uint8Array(await request.file.arrayBuffer());
      mesh = await readScan(
        request.file.name,
        bytes,
        workerTools((words) => answer({ kind: 'progress', words })),
      );
      return answer({ kind: 'read', summary: summarizeScan(mesh) });
    }
    case 'measure':
      return answer({ kind: 'measured', id: request.id, sizeMetres: placed(request.placing).sizeMetres });
    case 'pack': {
      const { triangles, sizeMetres } = placed(request.placing);
      if (sizeMetres.some((side) => side > mostMetres))
        throw new ScanError(
          `It would be ${Math.round(Math.max(...sizeMetres))} m long; at most ${mostMetres} m are kept`,
        );
      return answer({ kind: 'packed', id: request.id, scan: encodeScan(triangles) });
    }
  }
};

self.onmessage = async ({ data }: MessageEvent<ScanRequest>) => {
  try {
    await respond(data);
  } catch (error) {
    const why = error instanceof ScanError ? error.message : 'It could not be read; there may not be enough memory';
    answer({ kind: 'failed', id: data.kind === 'read' ? 0 : data.id, why });
  }
};
