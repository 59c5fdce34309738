// @vitest-environment happy-dom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { scrollFor, scrollWith } from '../../../app/web/groundplan/scroll-with.ts';

/** A phone of 844 pixels, its bar at 783; a plan of 374 that ends below it. */
const seen = { top: 0, bottom: 783 };
const planAt = (top: number) => ({ top, bottom: top + 374 });

describe('scrollFor', () => {
  it('scrolls nothing while the hand is away from the edges', () => {
    for (const y of [60, 400, 727]) expect(scrollFor(y, planAt(538), seen)).toBe(0);
  });

  it('scrolls the farther the nearer the hand is to the lower edge', () => {
    expect(scrollFor(728, planAt(538), seen)).toBe(1);
    expect(scrollFor(760, planAt(538), seen)).toBe(33);
  });

  it('brings the whole plan into sight under a hand that stays at the edge, and no more', () => {
    let top = 538;
    for (let i = 0; i < 50; i++) top -= scrollFor(760, planAt(top), seen);
    // 8 pixels are left between plan and bar
    expect(top + 374).toBe(783 - 8);
  });

  it('does the same upward', () => {
    let top = -200;
    expect(scrollFor(40, planAt(top), seen)).toBe(-16);
    for (let i = 0; i < 50; i++) top -= scrollFor(20, planAt(top), seen);
    expect(top).toBe(8);
  });

  it('lets a plan be that is in sight whole', () => {
    for (const y of [0, 300, 783]) expect(scrollFor(y, planAt(200), seen)).toBe(0);
  });
});

describe('scrollWith', () => {
  afterEach(() => vi.restoreAllMocks());
  const standing = (className: string, top: number, bottom: number): Element => {
    const element = document.createElement('div');
    element.className = className;
    element.getBoundingClientRect = () => new DOMRect(0, top, 390, bottom - top);
    return element;
  };

  it('counts the bar of rooms as the foot of what is seen; where there is none, nothing scrolls', () => {
    const scrollBy = vi.spyOn(window, 'scrollBy').mockImplementation(() => undefined);
    const plan = standing('groundplan', 538, 912);
    document.body.replaceChildren(standing('switch', 0, 0));
    scrollWith(plan, { clientY: 760 });
    expect(scrollBy).not.toHaveBeenCalled();
    document.body.replaceChildren(standing('switch', 783, 844));
    scrollWith(plan, { clientY: 760 });
    expect(scrollBy.mock.calls).toEqual([[0, 33]]);
  });
});
