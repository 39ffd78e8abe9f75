import { defineConfig } from "vitest/config";

/** The browser tests run by themselves and one file at a time: a browser at work leaves no core to spare. */
export default defineConfig({
	test: {
		projects: [
			{
				test: {
					name: "program",
					include: ["tests/**/*.test.ts"],
					exclude: ["tests/browser/**"],
					testTimeout: 60_000,
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
					sequence: { groupOrder: 1 },
				},
			},
		],
	},
});
