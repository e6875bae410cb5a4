/** What a person does not need in the first second; each comes as a file of its own. */
import { lazyView } from "./lazy-view.tsx";

/** Fetched as soon as the first view stands: a tab opens it. */
export const LazyMoreView = lazyView(
  async () => (await import(/* webpackChunkName: "pane-more", webpackPrefetch: true */ "./more-view.tsx")).MoreView,
);
export const LazyTryView = lazyView(
  async () => (await import(/* webpackChunkName: "pane-try" */ "../try/try-view.tsx")).TryView,
);
export const LazyFunctionsView = lazyView(
  async () => (await import(/* webpackChunkName: "pane-functions" */ "../functions/functions-view.tsx")).FunctionsView,
);
export const LazyAboutView = lazyView(
  async () => (await import(/* webpackChunkName: "pane-about" */ "../about/about-view.tsx")).AboutView,
);
/** Nobody came for it: a place for it appears when it does. */
export const LazyTour = lazyView(
  async () => (await import(/* webpackChunkName: "pane-tour" */ "../tour/tour.tsx")).Tour,
  "unseen",
);
/** What is wrong with the log, and the repair: most days nobody sees either. */
export const LazyProblemView = lazyView(
  async () => (await import(/* webpackChunkName: "pane-mend" */ "../start/problem-view.tsx")).ProblemView,
);
export const LazyUnknownFunctions = lazyView(
  async () => (await import(/* webpackChunkName: "pane-mend" */ "../start/repair-view.tsx")).UnknownFunctions,
);
export const LazyTypedOver = lazyView(
  async () => (await import(/* webpackChunkName: "pane-mend" */ "../start/repair-view.tsx")).TypedOver,
);
export const LazyStartView = lazyView(
  async () => (await import(/* webpackChunkName: "pane-start" */ "../start/start-view.tsx")).StartView,
);
export const LazyClaimsView = lazyView(
  async () => (await import(/* webpackChunkName: "pane-claims" */ "../claims/claims-view.tsx")).ClaimsView,
);
export const LazyShopView = lazyView(
  async () => (await import(/* webpackChunkName: "pane-shop" */ "../shop/shop-view.tsx")).ShopView,
);
export const LazyAdoptView = lazyView(
  async () => (await import(/* webpackChunkName: "pane-adopt" */ "../adopt/adopt-view.tsx")).AdoptView,
);

/** Fetched as soon as the first view stands, since most people came to record something. */
export const LazyRecordView = lazyView(
  async () =>
    (await import(/* webpackChunkName: "pane-record", webpackPrefetch: true */ "../record/record-view.tsx")).RecordView,
);

export const LazyReadingCard = lazyView(
  async () =>
    (await import(/* webpackChunkName: "pane-reading", webpackPrefetch: true */ "../now/reading-card.tsx")).ReadingCard,
);

export const LazyRecordedStrip = lazyView(
  async () => (await import(/* webpackChunkName: "pane-reading" */ "../now/recorded-strip.tsx")).RecordedStrip,
);
