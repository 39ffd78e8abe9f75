/**
 * How sure a source is.
 * "seen": read in the place named. "from memory": remembered, not read again.
 * "derived": arithmetic on something seen. "estimate": a starting value to replace.
 */
export type Mark =
	| "seen"
	| "from memory"
	| "derived"
	| "estimate"
	| "definition"
	| "common practice, no source";

export interface Source {
	readonly title: string;
	readonly mark: Mark;
	/** Edition, year, page or table. */
	readonly place?: string;
	readonly url?: string;
	/** Where other sources say something else, what they say. */
	readonly disagreement?: string;
}

export const definition: Source = { title: "Definition", mark: "definition" };
export const commonPractice: Source = {
	title: "Common practice, no source",
	mark: "common practice, no source",
};
export const estimate: Source = {
	title: "Estimate: a starting value, to be replaced by the unit's own",
	mark: "estimate",
};

/** Every published source the program relies on, said once. */
export const sources = {
	enBirth: {
		title: "KC et al., EN-BIRTH, BMC Pregnancy and Childbirth 21(S1):235",
		place: "2021, abstract and key findings; 22,752 births in five hospitals",
		url: "https://link.springer.com/article/10.1186/s12884-020-03422-9",
		mark: "seen",
		disagreement:
			"Of 100 newborns about 4 were bag-masked and 16 stimulated; between hospitals 0.7 to 7.1 and 5.2 to 21.0.",
	},
	poissonBirths: {
		title: "Gam et al., BMJ Open 3:e002920: births by weekday are well described by Poisson",
		place: "2013, abstract; 211,290 births in seven clinics",
		url: "https://bmjopen.bmj.com/content/3/8/e002920.full",
		mark: "seen",
	},
	thinning: {
		title: "Thinning and adding of Poisson counts",
		place: "textbook result; numbers recomputed in the tests",
		mark: "derived",
	},
	discounted: {
		title: "Harvey and Fernandes, Journal of Business and Economic Statistics 7(4):407-417",
		place: "1989; recursions as in Handbook of Discrete-Valued Time Series ch. 11, pp. 250-251",
		url: "https://www.rdocumentation.org/packages/pgam/versions/0.4.17/topics/pgam.filter",
		mark: "seen",
	},
	weekdays: {
		title: "Barra et al., Tidsskrift for Den norske legeforening 135(23-24)",
		place: "2015, abstract: Tuesday 7.5 % above Sunday; the drawing towards 1 is an estimate",
		mark: "seen",
		disagreement:
			"Where births are planned, weekends are 20 to 35 % lower (USA): learned from the unit's own days.",
	},
	palm: {
		title: "Feeney and Sherbrooke, Management Science 12(5):391 (Palm's theorem, base stock)",
		place: "1966, abstract",
		url: "https://scilit.com/publications/43e4600156a092630699927869addd94",
		mark: "seen",
	},
	perishable: {
		title: "Schmidt and Nahmias: one-for-one ordering of perishable stock",
		place: "1985; derived again and simulated in the tests",
		mark: "from memory",
	},
	readyLife: {
		title: "Screening reference manual, International Agency for Research on Cancer copy",
		place: "p. 130: up to one week in a closed, disinfected container",
		url: "https://www.yumpu.com/en/document/view/49169087/reference-manual-iarc-screening-group/130",
		mark: "seen",
		disagreement:
			"Once opened: at once or within 24 hours (from memory). Some protocols: use at once.",
	},
	soakStrength: {
		title: "Book copy of a national guideline: 0.5 %, 20 minutes, for containers",
		place: "2015; for devices 0.5 % with ordinary water is from memory",
		url: "https://autoclaveindicatortape.wordpress.com/2015/12/26/autoclave-indicator-tape-13/",
		mark: "seen",
		disagreement:
			"Screening reference manual Table C-1: 0.1 % made with boiled water, 20 minutes (seen). Some makers and teaching sheets do not list chlorine at all.",
	},
	soakMinutes: {
		title: "A Book for Midwives",
		place: "2010, p. 64: at least 20 minutes, clean first",
		url: "https://iiab.me/modules/en-hesperian_health/en_midw_2011_Full_Book/page80.html",
		mark: "seen",
		disagreement:
			"10 minutes is decontamination before cleaning; 30 minutes stands in other guidance.",
	},
	solutionLife: {
		title: "CDC, how to make 0.1 % chlorine solution; CDC poster CS316270A",
		place: "9 February 2021; 15 May 2020: made new every day, good for up to 24 hours",
		url: "https://www.cdc.gov/coronavirus/2019-ncov/global-covid-19/make-chlorine-solution-non-healthcare-settings.html",
		mark: "seen",
		disagreement:
			"Cox's Bazar water sector 2020: 3 to 4 days for solution from calcium hypochlorite.",
	},
	dilution: {
		title: "CDC and ICAN, Best Practices for Environmental Cleaning, Appendix E",
		place: "chlorine formulas and examples",
		url: "https://www.cdc.gov/healthcare-associated-infections/hcp/cleaning-global/appendix-e.html",
		mark: "seen",
	},
	madeUpTo: {
		title: "IFRC, Epidemic control for volunteers, action tool 39",
		place: "2022: 100 mL of 5 % and 900 mL of water",
		url: "https://epidemics.ifrc.org/volunteer/action/39-preparing-and-using-disinfectants",
		mark: "seen",
		disagreement:
			"Some tables say 100 mL per litre, which added to a litre makes 0.455 %, not 0.5 %.",
	},
	onePercent: {
		title: "Cholera outbreak field manual, Appendix 14; MSF Essential drugs",
		place: "1 % is 10 g/L is 10,000 mg/L",
		url: "https://choleraoutbreak.org/book-page/appendix-14-preparation-and-use-1-chlorine-solution-disinfect-water",
		mark: "seen",
	},
	chlorometric: {
		title: "Union des professeurs de physique et de chimie, Degré chlorométrique",
		place: "one degree: 3.17 g of available chlorine per litre",
		url: "https://www.udppc.asso.fr/chimie-au-laboratoire/le-degre-chlorometrique",
		mark: "seen",
		disagreement: "Handbooks use 0.3 % a degree, which reads 5 % low by volume.",
	},
	atomicWeights: {
		title: "IUPAC standard atomic weights",
		place: "1995, Table 2: Cl2 70.906, NaOCl 74.442 g/mol, ratio 0.9525",
		url: "http://old.iupac.org/reports/1996/6812coplen/atwt1995_t2.html",
		mark: "derived",
	},
	tabletLabel: {
		title: "MSF Essential drugs; Red Cross items catalogue: tablets of 1.67 g hold 1 g",
		place: "a tablet's weight is not its chlorine",
		url: "https://medicalguidelines.msf.org/en/viewport/EssDr/english/chlorine-releasing-compounds-nadcc-hth-bleach-chlorinated-lime-16687067.html",
		mark: "seen",
	},
	powderLoss: {
		title: "Cholera outbreak field manual, Appendix 14: about 2 % of active chlorine a year",
		place: "read here as points of the percentage",
		url: "https://choleraoutbreak.org/book-page/appendix-14-preparation-and-use-1-chlorine-solution-disinfect-water",
		mark: "seen",
	},
	fading: {
		title: "Adam and Gordon, Inorganic Chemistry 38:1299-1304",
		place:
			"1999, abstract: second order, fitted for 15 to 55 °C and 0.7 to 3 mol/L; the factor 1 in the rate is from memory",
		url: "https://suppr.wilddata.cn/browses/detail/pubmed/11670917",
		mark: "seen",
		disagreement:
			"A maker of plants gives 3.5 times faster for each 10 °C, the law 3.9; a supplier reports far faster loss of 12.5 % bleach.",
	},
	readingErrors: {
		title: "Wells et al., PLoS ONE 11(5):e0152442",
		place:
			"2016, abstract: strips 5.2 to 48 %, dilution and colour 2.4 to 19 %, titration up to 12.4 % off",
		url: "https://pmc.ncbi.nlm.nih.gov/articles/PMC4887006",
		mark: "seen",
	},
	carryIn: {
		title: "Dilution by the water wet parts carry in",
		place: "arithmetic; the rule to dry first is from memory",
		mark: "derived",
	},
	threeRinses: {
		title: "Handbooks for small units: rinse at least three times with boiled water",
		place: "the effect is computed in the reference notes",
		mark: "from memory",
	},
	boilHold: {
		title: "Emerging Infectious Diseases 31(8), table 1, compares the bodies' rules",
		place:
			"2025: WHO none; CDC 1 min, 3 above 1,981 m; EPA 1, 3 above 1,524 m; Health Canada 1, 2 above 2,000 m",
		url: "https://wwwnc.cdc.gov/eid/article/31/8/25-0208-t1",
		mark: "seen",
		disagreement:
			"20 minutes for rinse water in handbooks of high-level disinfection (from memory).",
	},
	standardAtmosphere: {
		title: "Standard atmosphere and Antoine equation for water",
		place: "constants from memory; checked against a table",
		mark: "from memory",
	},
	cooling: {
		title: "Newton's law of cooling; the rate scaled by volume to the power −1/3",
		place: "derived; a covered 10 L pot at 0.25 per hour is an estimate, one k is an approximation",
		mark: "derived",
		disagreement: "Kettles measured by others give 0.13 to 0.57 per hour for 10 L.",
	},
	heat: {
		title: "Heat of water: 4.186 kJ/kg/K; of evaporation: 2,257 kJ/kg",
		place: "physical tables",
		url: "https://wfrjr.com/data/formula/data/water.html",
		mark: "seen",
	},
	stoves: {
		title: "Open clean-cooking data (technical specifications of stoves)",
		place: "efficiency and heating value by fuel",
		mark: "seen",
		disagreement: "A second open data set gives 0.09 for three stones, 0.25 for improved charcoal.",
	},
	losses: {
		title:
			"Open University, immunization module 5.2.5: multiply the need by 100 ÷ (100 − wastage %)",
		url: "https://www.open.edu/openlearncreate/mod/oucontent/view.php?id=53353&section=1.4.5",
		mark: "seen",
	},
	periodicReview: {
		title:
			"MSH, Family Planning Manager's Handbook ch. 8: order = desired maximum − on hand − on order",
		place: "lead time + review period set the level",
		url: "http://erc.msh.org/fpmh_english/chp8/p4.html",
		mark: "seen",
		disagreement:
			"Handbooks add a safety stock of half to one review period; here the chance of lasting sets it.",
	},
	monthsOfStock: {
		title: "JSI, The Logistics Handbook 3.2: stock on hand ÷ average monthly consumption",
		place: "30.4 days a month as in WHO 2002, Annex 5",
		url: "https://123dok.com/article/purpose-assessing-stock-status-logistics-handbook.qvlw0k50",
		mark: "seen",
	},
	firstExpiredFirstOut: {
		title:
			"WHO and JSI, Guidelines for the Storage of Essential Medicines: the lot that expires first leaves first",
		place: "2003; the wording is from memory",
		mark: "from memory",
	},
	vinegarStrength: {
		title: "FDA Compliance Policy Guide Sec. 525.825",
		place: "March 1995: vinegar holds at least 4 g of acetic acid per 100 mL; 5 % is usual",
		mark: "seen",
	},
} as const satisfies Record<string, Source>;
