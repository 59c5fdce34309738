/** Parts of the room that come when they are opened, or when the page is at rest. */
export const loadHourPanel = () => import('./HourPanel.tsx').then(({ HourPanel }) => ({ default: HourPanel }));
export const loadSlipFields = () => import('./SlipFields.tsx').then(({ SlipFields }) => ({ default: SlipFields }));

/** In the place of a part that did not come. */
export const NotLoaded = () => (
  <p className="quiet">This part could not be loaded. Save your setup, then load the page again with a network.</p>
);
