import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { heldWords, orderWords } from '../../../app/web/timeline/pass-words.ts';
import { snapped, ticksOf, trackOf } from '../../../app/web/timeline/track.ts';
import { turnsOf } from '../../../app/web/timeline/turns.ts';
import { cameraFit, walkFit } from '../../../app/web/timeline/walk-fit.ts';
import { wayMarks } from '../../../app/web/timeline/way-marks.ts';
import { minutesText } from '../../../app/web/ui/minutes-text.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import { frameOrders } from '../../../core/readings/frame-order.ts';
import { lastSetFrame, leavesCameraAt } from '../../../core/readings/set-off.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Frame, Pass, Scheme } from '../../../core/setup/schema/setup.ts';

const read = (name: string) => parseSetup(readFileSync(`assets/setups/${name}.json`, 'utf8'));

describe('walks on the time line', () => {
  it.each([
    ['lone-tree', 'twin-rim', 0.8],
    ['lone-tree', 'long', 0.5],
    ['beached-boat', 'kicker', 0.3],
    ['bothy-in-snow', 'each-its-own', 0.2],
  ])('%s, %s at %d m/s: the slack is the report’s (abs 1e-9 s), and so is how bad it is', (name, schemeId, speed) => {
    const sample = read(name);
    const setup = { ...sample, walking: { ...sample.walking, metresPerSecond: speed } };
    const scheme = setup.schemes.find(({ id }) => id === schemeId) as Scheme;
    const report = reportScheme(setup, scheme);
    let walks = 0;
    for (const { frame, before } of turnsOf(scheme)) {
      const of = report.frames.find(({ id }) => id === frame.id);
      for (const pass of frame.passes) {
        const timing = of?.passes.find(({ passId }) => passId === pass.id)?.timing;
        const fit = walkFit(pass, before.get(pass.id), timing, speed);
        expect(fit === null).toBe(timing?.walkSeconds === null);
        if (!fit) continue;
        walks++;
        expect(fit.slackSeconds).toBeCloseTo(timing?.slackSeconds as number, 9);
        const caution = of?.cautions.find(({ code, passId }) => code === 'cannot-walk' && passId === pass.id);
        expect(fit.late).toBe(caution?.severity ?? null);
      }
    }
    expect(walks).toBeGreaterThan(0);
  });
});

describe('the way from the camera', () => {
  it.each([
    ['lone-tree', 'twin-rim'],
    ['lone-tree', 'long'],
    ['natural-arch', 'key-and-accent'],
    ['three-stones', 'side'],
  ])('%s, %s: has the report’s time (abs 1e-9 s), and names the delay that would just do', (name, schemeId) => {
    const setup = read(name);
    const scheme = setup.schemes.find(({ id }) => id === schemeId) as Scheme;
    const out = reportScheme(setup, scheme).walks.find(({ from }) => from === null);
    const turns = turnsOf(scheme);
    const turn = turns.find(({ frame }) => frame.id === out?.to?.frameId);
    const pass = turn?.frame.passes.find(({ id }) => id === out?.to?.passId);
    if (!out || !turn || !pass) {
      // nobody walks to lamps on stands
      expect(turns.every(({ frame }) => frame.passes.every(({ held }) => held === 'stand'))).toBe(true);
      return;
    }
    expect(turn.before.has(pass.id)).toBe(false);
    const set = lastSetFrame(scheme, turn.frame);
    const ways = (delaySeconds: number) => {
      const frames = scheme.frames.map((frame) => (frame === set ? { ...frame, delaySeconds } : frame));
      const own = frames[scheme.frames.indexOf(turn.frame)] as Frame;
      const opens = frameOrders({ frames })[frames.indexOf(own)]?.startSeconds as number;
      const isFirst = set === scheme.frames[0];
      return cameraFit(pass, out, opens, leavesCameraAt({ frames }, own), { delaySeconds, isFirst });
    };
    const now = ways(set.delaySeconds);
    expect(now.slackSeconds).toBeCloseTo((out.availableSeconds as number) - out.seconds, 9);
    const wanted = now.delaySeconds as number;
    expect(ways(wanted).slackSeconds).toBeGreaterThanOrEqual(-1e-6);
    if (wanted > 0) expect(ways(wanted - 1).slackSeconds).toBeLessThan(1e-6);
  });
});

describe('trackOf', () => {
  it('has the shutter open and close at the same places whatever the frame and its delay', () => {
    const ends = [
      [0.01, 0],
      [15, 2],
      [240, 3600],
    ].map(([seconds, delay]) => {
      const track = trackOf(800, seconds as number, delay as number);
      return [track.x(0), track.x(seconds as number)];
    });
    for (const end of ends)
      end.forEach((x, i) => {
        expect(x).toBeCloseTo(ends[0]?.[i] as number, 6);
      });
  });

  it('gives back the time of a pixel, and keeps a delay on the track, shortened only where it must be', () => {
    const track = trackOf(800, 15, 30);
    for (const seconds of [0, 3.3, 15]) expect(track.secondsAt(track.x(seconds))).toBeCloseTo(seconds, 9);
    expect(track.isDelayShortened).toBe(true);
    expect(track.x(-30)).toBeGreaterThanOrEqual(0);
    const short = trackOf(800, 60, 5);
    expect(short.isDelayShortened).toBe(false);
    expect(short.x(0) - short.x(-5)).toBeCloseTo(short.x(5) - short.x(0), 9);
  });

  it.each([0.004, 1, 8, 15, 55, 240, 36000])('marks a frame of %d s so that numbers do not touch', (seconds) => {
    const track = trackOf(700, seconds, 2);
    const ticks = ticksOf(track, 44);
    expect(ticks[0]).toBe(0);
    expect(ticks.at(-1)).toBeLessThanOrEqual(seconds);
    ticks.slice(1).forEach((tick, i) => {
      expect(track.x(tick) - track.x(ticks[i] as number)).toBeGreaterThanOrEqual(44 - 1e-6);
    });
  });
});

describe('what a bar and the running order say of a pass', () => {
  const walked = read('timber-jetty')
    .schemes.find(({ id }) => id === 'walk')
    ?.frames.flatMap(({ passes }) => passes)[0] as Pass;

  it('marks where a moving lamp turns back, and its waypoints on the first stroke', () => {
    const [first, last] = walked.waypoints as [Pass['waypoints'][number], Pass['waypoints'][number]];
    const pass = {
      ...walked,
      on: 10,
      off: 40,
      strokes: 3,
      waypoints: [
        { ...first, time: 10 },
        { ...first, time: 14 },
        { ...last, time: 20 },
      ],
    };
    expect(wayMarks(pass)).toEqual({ turns: [20, 30], waypoints: [14] });
    expect(wayMarks({ ...pass, waypoints: pass.waypoints.slice(0, 1) })).toEqual({ turns: [], waypoints: [] });
  });

  it('says what is to be done, in words', () => {
    const pass = { ...walked, on: 0, off: 8 };
    expect([orderWords({ ...pass, strokes: 3 }), heldWords({ ...pass, strokes: 3 })]).toEqual([
      'count 8\u00a0s, 3 strokes',
      '3 strokes',
    ]);
    const still = { ...pass, waypoints: pass.waypoints.slice(0, 1) };
    expect([orderWords(still), heldWords(still)]).toEqual(['count 8\u00a0s', '']);
    expect([orderWords({ ...still, held: 'stand' }), heldWords({ ...still, held: 'stand' })]).toEqual([
      'on its stand 8\u00a0s',
      'on a stand',
    ]);
  });
});

describe('snapped', () => {
  it('goes to the half second, or to the hundredth where it is free', () => {
    expect([3.2, 3.26, -0.1].map((seconds) => snapped(seconds, false))).toEqual([3, 3.5, 0]);
    expect(snapped(3.2649, true)).toBe(3.26);
  });
});

describe('minutesText', () => {
  it.each([
    [0, '0:00'],
    [59.6, '1:00'],
    [86, '1:26'],
    [3600, '60:00'],
    [-0.2, '0:00'],
    [-7, '−0:07'],
  ])('%d s is %s', (seconds, text) => {
    expect(minutesText(seconds)).toBe(text);
  });
});
