import { spawnSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { resultsPage } from "./resultsPage.ts";

/** Every benchmark, each in a process of its own so that none pays for what another left behind. */
const BENCHES = [
	"plan",
	"engine",
	"units",
	"district",
	"districtSet",
	"memory",
	"combine",
	"forecast",
	"record",
	"merge",
	"growth",
	"page",
	"sheetsOpened",
	"unitsPage",
];
const asked = process.argv.slice(2);

for (const bench of asked.length > 0 ? asked : BENCHES) {
	const script = join(import.meta.dirname, `${bench}.ts`);
	const { status } = spawnSync(process.execPath, ["--expose-gc", script], { stdio: "inherit" });
	if (status !== 0) process.exit(status ?? 1);
}
writeFileSync(join(import.meta.dirname, "RESULTS.md"), resultsPage(BENCHES));
