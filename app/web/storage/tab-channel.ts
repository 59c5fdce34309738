/** What one tab tells the others: it wrote a setup, deleted one, or brought a deleted one back. */
export interface TabMessage {
  readonly kind: 'kept' | 'deleted' | 'back';
  readonly key: string;
}

export interface TabChannel {
  tell(message: TabMessage): void;
}

/** A way to the other tabs; without one they find out when they write. */
export const openTabChannel = (hear: (message: TabMessage) => void): TabChannel => {
  if (typeof BroadcastChannel === 'undefined') return { tell: () => undefined };
  const channel = new BroadcastChannel('lampfall');
  channel.onmessage = ({ data }: MessageEvent<TabMessage>) => hear(data);
  return { tell: (message) => channel.postMessage(message) };
};
