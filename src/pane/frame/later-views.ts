/** What a person does not need in the first second; each comes as a file of its own. */
import { laterView } from "./later-view.tsx";

export const LaterTryView = laterView(
  async () => (await import(/* webpackChunkName: "pane-try" */ "../try/try-view.tsx")).TryView,
);
export const LaterFunctionsView = laterView(
  async () => (await import(/* webpackChunkName: "pane-functions" */ "../functions/functions-view.tsx")).FunctionsView,
);
export const LaterStartView = laterView(
  async () => (await import(/* webpackChunkName: "pane-start" */ "../start/start-view.tsx")).StartView,
);
export const LaterClaimsView = laterView(
  async () => (await import(/* webpackChunkName: "pane-claims" */ "../claims/claims-view.tsx")).ClaimsView,
);
export const LaterShopView = laterView(
  async () => (await import(/* webpackChunkName: "pane-shop" */ "../shop/shop-view.tsx")).ShopView,
);
export const LaterAdoptView = laterView(
  async () => (await import(/* webpackChunkName: "pane-adopt" */ "../adopt/adopt-view.tsx")).AdoptView,
);

/** Fetched as soon as the first view stands, since most people came to record something. */
export const LaterRecordView = laterView(
  async () =>
    (await import(/* webpackChunkName: "pane-record", webpackPrefetch: true */ "../record/record-view.tsx")).RecordView,
);
