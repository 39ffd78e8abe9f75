import { defineConfig } from "vitest/config";

/**
 * Tests that replace a module of the program or count what ran of it: each file has a
 * process of its own. All others share what is loaded, which is most of their time.
 */
const apart = ["tests/fuzz/**/*.test.ts", "tests/**/history.test.ts", "tests/**/inFrench.test.ts"];

/** The browser tests run by themselves and one file at a time: a browser at work leaves no core to spare. */
export default defineConfig({
	test: {
		projects: [
			{
				test: {
					name: "program",
					include: ["tests/**/*.test.ts"],
					exclude: ["tests/browser/**", ...apart],
					testTimeout: 60_000,
					isolate: false,
					// Plans are many small objects that soon go: with room for more of them fewer are moved about.
					execArgv: ["--max-semi-space-size=64"],
					maxWorkers: "100%",
					sequence: { groupOrder: 0 },
				},
			},
			{
				test: {
					name: "apart",
					include: apart,
					testTimeout: 60_000,
					maxWorkers: "100%",
					sequence: { groupOrder: 0 },
				},
			},
			{
				test: {
					name: "browser",
					include: ["tests/browser/**/*.test.ts"],
					testTimeout: 120_000,
					hookTimeout: 120_000,
					maxWorkers: 1,
					// A machine at work may draw a picture later than a test looks: it looks once more.
					retry: 1,
					expect: { poll: { timeout: 8_000 } },
					// One browser and one built site for all of them: tests/browser/fixture.ts.
					isolate: false,
					sequence: { groupOrder: 1 },
				},
			},
		],
	},
});
