/** Stands in for libraries the grid asks for and never uses here: date pickers, old browsers. */
export default {};
