import type { StickWords } from "../stickWords.ts";

export const englishWords: StickWords = {
	openFile: "Open Basinbook.html",
	readMeFile: "READ ME.txt",
	demoFile: "demo workbook.zip",
	megabytes: " MB",
	opening: "Opening Basinbook …",
	openLink: "Open the workbook",
	stuck:
		"If the workbook does not open, this file is not beside its folder “program”. Take the whole folder “Basinbook” out of the zip first (in Windows: right-click on the zip, Extract All), then open this file in that folder.",
	readMe: (version, size, button) => `Basinbook ${version}, to carry on a memory stick

1. If this came as a zip, take the whole folder out of it first.
   In Windows: right-click on the zip, Extract All.
2. Double-click "Open Basinbook.html". It needs a web browser and nothing
   else: no network, no installing. Keep all the files of this folder together.
3. "demo workbook.zip" is a workbook of an invented unit, to try. Open it in
   Basinbook with the button "${button("Open files")}". Do not unpack it.

Your work is not on this stick until you put it there. The browser keeps a
draft on the computer you sit at. Press "${button("Save workbook")}", and copy the file from
the downloads to this folder. Open it again with "${button("Open files")}".

This folder takes ${size.folder}, the zip of it ${size.zip}.

Basinbook is a planning aid, not a validated process. Your national protocol,
the maker's instructions and qualified staff's judgement come first. Chlorine
never meets vinegar, another acid or ammonia.

Licences of the program and its parts: LICENCES.txt
`,
};
