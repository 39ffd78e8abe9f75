import { say } from "../../../core/say.ts";
import type { PageTitle } from "../../page.ts";

/** Only what the storekeeper needs. */
export const storekeeperTitle: PageTitle = {
	file: "storekeeper",
	title: say`The storekeeper's page`,
};
