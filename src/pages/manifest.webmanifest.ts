import { language } from "../core/language.ts";
import { say } from "../core/say.ts";

/** What a device shows where the site is put among its own programs. */
const manifest = {
	name: "Basinbook",
	description: say`Newborn resuscitation kits, ready every hour`,
	lang: language,
	start_url: "./index.html",
	scope: "./",
	display: "standalone",
	background_color: "#f6f1e5",
	theme_color: "#6b1d34",
	icons: [
		{ src: "./icon.svg", sizes: "any", type: "image/svg+xml" },
		{ src: "./icon-192.png", sizes: "192x192", type: "image/png" },
		{ src: "./icon-512.png", sizes: "512x512", type: "image/png" },
		{ src: "./icon-maskable-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
	],
};

export const GET = () => new Response(JSON.stringify(manifest, null, "\t"));
