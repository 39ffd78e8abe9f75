/** Stands in for libraries the grid asks for and never uses here: dates and date pickers. */
export default {};
