import { createRoot } from "react-dom/client";

import { whenHostReady } from "../excel/office-host.ts";
import { Pane } from "./pane.tsx";

const place = document.getElementById("pane");
if (place === null) throw new Error("The page has no place for the pane.");
const root = createRoot(place);
void whenHostReady().then(() => {
  root.render(<Pane />);
});
