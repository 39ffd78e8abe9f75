import { planCommand } from "./planCommand.ts";

process.exitCode = await planCommand(process.argv.slice(2), console);
