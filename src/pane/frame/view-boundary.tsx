import { Component, type ErrorInfo, type ReactNode } from "react";

/** What went wrong while a view was drawn, and where. */
export interface Fault {
  readonly error: unknown;
  readonly where: string;
}

interface Props {
  /** Another one of these draws the view anew. */
  readonly of: unknown;
  readonly onFault: () => void;
  readonly instead: (fault: Fault, again: () => void) => ReactNode;
  readonly children: ReactNode;
}

interface State {
  readonly fault?: Fault | undefined;
}

/** Holds a view: a fault while it is drawn shows something instead of leaving the pane blank. React has classes alone for this. */
export class ViewBoundary extends Component<Props, State> {
  override state: State = {};

  static getDerivedStateFromError(error: unknown): State {
    return { fault: { error, where: "" } };
  }

  override componentDidCatch(error: unknown, { componentStack }: ErrorInfo): void {
    this.props.onFault();
    this.setState({ fault: { error, where: componentStack ?? "" } });
  }

  override componentDidUpdate(before: Props): void {
    if (before.of !== this.props.of && this.state.fault !== undefined) this.again();
  }

  again = (): void => {
    this.setState({ fault: undefined });
  };

  override render(): ReactNode {
    const { fault } = this.state;
    return fault === undefined ? this.props.children : this.props.instead(fault, this.again);
  }
}
