import { describe, expect, it } from 'vitest';
import { limits } from '../../../core/cautions/limits.ts';
import { runLampfall } from './run-command.ts';

describe('lampfall explain', () => {
  it('says of a code what it means, its limits and their source', async () => {
    const { exitCode, stdout } = await runLampfall('explain', 'near-axis');
    expect(exitCode).toBe(0);
    expect(stdout).toContain(`under ${limits.nearAxisDegrees.danger}°`);
    expect(stdout).toContain('Source: Common practice, no published source.');
  });
  it('says both where a reading and a caution share a name', async () => {
    const { stdout } = await runLampfall('explain', 'burnt');
    expect(stdout).toContain('Burnt (caution)');
    expect(stdout).toContain('Burnt (reading)');
  });
  it('lists what it knows, and tells where a name is none', async () => {
    expect((await runLampfall('explain')).stdout).toMatch(/\n {2}star-trails +Star trails\n/);
    const wrong = await runLampfall('explain', 'toString');
    expect(wrong).toMatchObject({ exitCode: 1, stdout: '' });
    expect(wrong.stderr).toContain('nothing is called "toString"');
    expect((await runLampfall('explain', 'a', 'b')).stderr).toContain('one name at a time');
  });
});
