import { startBrowser } from "./chromium.ts";
import { type Site, servedSite, siteOnStick } from "./site.ts";

/**
 * One browser and one built site for all browser tests: to start them for each file took longer
 * than many a test. Each test has a context of its own, so none sees what another left.
 */
export const browser = await startBrowser();
/** The built site, served over http from this machine. */
export const served: Site = await servedSite();
/** The built site in a folder with spaces in its name, opened over file://. */
export const onStick: Site = await siteOnStick();

process.once("exit", () => onStick.close());
