import type { Language } from "../../messages/languages.ts";

/** What stands on the stick in one language. */
export interface StickWords {
	/** The file to double-click. */
	readonly openFile: string;
	readonly readMeFile: string;
	/** Short for a million bytes. */
	readonly megabytes: string;
	readonly opening: string;
	readonly openLink: string;
	/** What to do where the page does not go on by itself. */
	readonly stuck: string;
	/** Sizes are whole texts, such as "1.4 MB"; buttons are as the workbook writes them. */
	readMe(version: string, size: StickSize, button: (english: string) => string): string;
}

export interface StickSize {
	readonly folder: string;
	readonly zip: string;
}

/** The stick's own texts. They are not part of the site, so its catalogues do not hold them. */
export const stickWords: Readonly<Record<Language, StickWords>> = {
	en: {
		openFile: "Open Basinbook.html",
		readMeFile: "READ ME.txt",
		megabytes: "MB",
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

Basinbook is a planning aid, not a validated process. National protocol, the
maker's instructions and licensed practice come first. Chlorine never meets
vinegar, another acid or ammonia.

Licences of the program and its parts: LICENCES.txt
`,
	},
	fr: {
		openFile: "Ouvrir Basinbook.html",
		readMeFile: "LISEZ-MOI.txt",
		megabytes: "Mo",
		opening: "Ouverture de Basinbook…",
		openLink: "Ouvrir le classeur",
		stuck:
			"Si le classeur ne s'ouvre pas, ce fichier n'est pas à côté de son dossier « program ». Sortez d'abord tout le dossier « Basinbook » du zip (sous Windows : clic droit sur le zip, Extraire tout), puis ouvrez ce fichier dans ce dossier.",
		readMe: (version, size, button) => `Basinbook ${version}, à emporter sur une clé USB

1. Si vous l'avez reçu sous forme de zip, sortez-en d'abord tout le dossier.
   Sous Windows : clic droit sur le zip, Extraire tout.
2. Double-cliquez sur « Ouvrir Basinbook.html ». Il faut un navigateur web et
   rien d'autre : ni réseau, ni installation. Gardez ensemble tous les fichiers
   de ce dossier.
3. « demo workbook.zip » est le classeur d'une unité inventée, pour essayer.
   Ouvrez-le dans Basinbook avec le bouton « ${button("Open files")} ».
   Ne le décompressez pas.

Votre travail n'est pas sur cette clé tant que vous ne l'y mettez pas. Le
navigateur garde un brouillon sur l'ordinateur que vous utilisez. Appuyez sur
« ${button("Save workbook")} », puis copiez le fichier des téléchargements dans ce
dossier. Rouvrez-le avec « ${button("Open files")} ».

Ce dossier occupe ${size.folder}, son zip ${size.zip}.

Basinbook est une aide à la planification, pas un procédé validé. Le protocole
national, la notice du fabricant et la pratique autorisée priment. Le chlore
ne rencontre jamais le vinaigre, un autre acide ou l'ammoniaque.

Licences du programme et de ses parties : LICENCES.txt
`,
	},
};
