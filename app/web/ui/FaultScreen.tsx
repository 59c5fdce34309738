import { Component, type ReactNode } from 'react';

interface FaultScreenProps {
  /** What to offer when drawing the page failed: usually a way to save the work. */
  readonly onSave: () => void;
  /** Told when that happened, so that it does not happen at once again. */
  readonly onFault: () => void;
  readonly children: ReactNode;
}

/** Stands in for the page when a fault in it would leave it blank. The work is still in memory and can be saved. */
export class FaultScreen extends Component<FaultScreenProps, { fault: string | null }> {
  override state = { fault: null as string | null };

  static getDerivedStateFromError(error: unknown): { fault: string } {
    return { fault: error instanceof Error ? error.message : 'unknown' };
  }

  override componentDidCatch(): void {
    this.props.onFault();
  }

  override render(): ReactNode {
    if (this.state.fault === null) return this.props.children;
    return (
      <main className="fault" role="alert">
        <h1>Something in the page went wrong</h1>
        <p>Your setup is still here. Save it as a file, then reload the page and open it again.</p>
        <p className="quiet">{this.state.fault}</p>
        <button type="button" onClick={this.props.onSave}>
          Save the setup
        </button>{' '}
        <button type="button" onClick={() => location.reload()}>
          Reload
        </button>
      </main>
    );
  }
}
