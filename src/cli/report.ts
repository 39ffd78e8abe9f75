import { reportCommand } from "./reportCommand.ts";
import { todayHere } from "./todayHere.ts";

process.exitCode = await reportCommand(process.argv.slice(2), console, todayHere());
