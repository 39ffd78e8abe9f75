/** Titles of the publications whose figures the reference cases hold; read in copies on the web. */
export const cdcCleaning =
	"CDC and ICAN, Best Practices for Environmental Cleaning in Global Healthcare Facilities with Limited Resources";
export const ebolaGuidance =
	"WHO, Interim infection prevention and control guidance, filovirus haemorrhagic fever, 2014";
export const acuteRespiratory =
	"WHO, Infection prevention and control of epidemic- and pandemic-prone acute respiratory infections, 2014";
export const laboratoryDilutions =
	"Table of recommended dilutions of chlorine-releasing compounds, text as in the WHO Laboratory Biosafety Manual (attribution from memory)";
export const ifrcDisinfectants = "IFRC, Preparing and using disinfectants, 2022";
export const healthDepartment2020 =
	"Philippines Department of Health, bleach solution, 2020, as printed in the press";
export const cdcHandwashing = "CDC, How to make 0.1 % chlorine solution, 2021";
export const cdcHandwash2020 = "CDC, Make a handwashing solution, 2020";
export const cdcPoster2014 = "CDC, Cleaning with 2.6 % liquid bleach, poster, 2014";
export const choleraManual = "Cholera outbreak field manual";
export const msfCholera = "MSF, Essential drugs: chlorine-releasing compounds";
export const iarcAtlas =
	"IARC, Atlas of visual inspection of the cervix, preparation of 0.5 % chlorine";
export const sheet56 =
	"Preparation of disinfecting solutions from 5.6 % hypochlorite (Spanish sheet)";
export const dilutionFactors = "Dilution factor examples (Spanish sheet)";
export const dailyDilution = "Daily dilution of sodium hypochlorite (Spanish sheet)";
export const stockSolution = "Making a stock solution of chlorine (French sheet)";
export const washingtonCode = "Washington Administrative Code 296-823-14055";
export const westernUniversity = "Western University, disinfecting solutions";
export const skillChecklist = "Instrument processing checklist";
export const infectionBooklet =
	"Infection prevention reference booklet, chlorine table, 1999 to 2011";
export const chlorometric = "UdPPC, Le degré chlorométrique, after the decree of 1968 and 1969";
export const dilutionFormula = "Formula of the cleaning guide, recomputed";
export const torontoHealth = "Toronto Public Health, low-level disinfection";
export const atomicWeights = "IUPAC, standard atomic weights 1995, Table 2";
export const chlorinationHandbook =
	"Product profile of sodium hypochlorite, after the Handbook of Chlorination, 1972";
export const operationalModule = "Indian facility operational module";
export const poissonTables = "Cumulative Poisson tables, three published copies";
export const hospitalNights = "Teaching exercise: births in a maternity hospital by night";
export const recomputed = "Recomputed with scipy, mpmath and R";
export const erlangTable = "Textbook table of offered load by blocking and servers, 45 rows";
export const erlangTests = "Point values of a published Erlang B table in a public test file";
export const sherbrooke = "Sherbrooke, Optimal Inventory Modeling of Systems, ch. 2";
export const factoryPhysics = "Hopp and Spearman, Factory Physics, base-stock example";
export const orderUpTo = "Cachon and Terwiesch, order-up-to exercise";
export const enBirth = "KC et al., EN-BIRTH, BMC Pregnancy and Childbirth 21(S1):235, 2021";
export const facilities = "Births a month in 127 facilities, BMJ Global Health";
export const openUniversity = "Open University, Immunization module (Ethiopia), session 5";
export const openUniversityResources = "Open University, resources module";
export const covidLogistics = "Ministry of Health of Ethiopia, COVID-19 vaccine logistics training";
export const tuberculosisProgramme =
	"National Tuberculosis Elimination Programme of India, logistics";
export const msfNeeds = "MSF, Management of a measles epidemic, 6.2 needs estimation";
export const familyPlanningHandbook = "MSH, Family Planning Manager's Handbook, ch. 8";
export const operationsManual = "Operations manual 22030.10.5.3, minimum and maximum levels";
export const logisticsHandbook = "JSI, The Logistics Handbook, 3.2";
export const fixedInterval = "Exercises in fixed-interval ordering, posted with answers";
export const harveyFernandes =
	"Harvey and Fernandes, Journal of Business and Economic Statistics 7(4):407-417, 1989";
export const discreteSeries = "Handbook of Discrete-Valued Time Series, ch. 11";
export const openDailyBirths = "US births a day, CDC/NCHS and SSA, public-domain data packages";
