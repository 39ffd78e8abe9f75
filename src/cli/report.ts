import { reportCommand } from "./reportCommand.ts";

process.exitCode = await reportCommand(process.argv.slice(2), console);
