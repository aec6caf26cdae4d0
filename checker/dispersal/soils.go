package dispersal

// TextureTables lists the tables by texture.
var TextureTables = []*TextureTable{&UtahTrench, &UtahMulch, &UniformPlumbingCode, &TexasClasses}

// asWorded says that a table's soils have the names of textures.
const asWorded = "the table's own words"

// UtahTrench is for trenches with perforated pipe that take untreated greywater.
var UtahTrench = TextureTable{
	Name:     "Utah, trench",
	Source:   "Utah Administrative Code R317-401-6 (2024), Table 4",
	Standing: "published",
	Matched:  asWorded,
	Rows: []Row{
		{"coarse sand or gravel", 5 * gallonPerDayPerSF, []string{"gravel", "coarse sand"}},
		{"fine sand", 4 * gallonPerDayPerSF, []string{"fine sand"}},
		{"sandy loam", 2.5 * gallonPerDayPerSF, []string{"sandy loam"}},
		{"sandy clay loam", 1.6 * gallonPerDayPerSF, []string{"sandy clay loam"}},
		{"clay loam", 1.1 * gallonPerDayPerSF, []string{"clay loam"}},
		{"clay with sand or gravel", 0.8 * gallonPerDayPerSF, []string{"clay"}},
	},
}

// UtahMulch is for mulch basins that take untreated greywater.
var UtahMulch = TextureTable{
	Name:     "Utah, mulch basin",
	Source:   "Utah Administrative Code R317-401-7 (2024), Table 8",
	Standing: "published",
	Matched:  asWorded,
	Rows: []Row{
		{"sand", 5 * gallonPerDayPerSF, []string{"sand"}},
		{"loam", 3 * gallonPerDayPerSF, []string{"loam"}},
		{"clay", 1 * gallonPerDayPerSF, []string{"clay"}},
	},
}

// UniformPlumbingCode is for irrigation and disposal fields that take untreated
// greywater. The code prints areas per 100 gallons a day; the rates are their
// reciprocals.
var UniformPlumbingCode = TextureTable{
	Name:     "Uniform Plumbing Code, six soils",
	Source:   "Uniform Plumbing Code, Table 1503.5 (formerly 1602.10, G-2, J-2)",
	Standing: "from memory",
	Matched:  "the names that Utah gives the same rows in R317-401-6, Table 4",
	Rows: []Row{
		{"coarse sand or gravel", perHundredGallons(20), []string{"gravel", "coarse sand"}},
		{"fine sand", perHundredGallons(25), []string{"fine sand"}},
		{"sandy loam", perHundredGallons(40), []string{"sandy loam"}},
		{"sandy clay", perHundredGallons(60), []string{"sandy clay loam", "sandy clay"}},
		{"clay with considerable sand or gravel", perHundredGallons(90), []string{"clay loam"}},
		{"clay with small amounts of sand or gravel", perHundredGallons(120), []string{"clay"}},
	},
}

// TexasClasses is for the effluent of septic tanks, which clogs soil more than
// greywater does: its rates are a fifth to a thirteenth of those for greywater. The
// area that counts is TexasArea. Class Ia is printed as more than 0.50.
var TexasClasses = TextureTable{
	Name:     "Texas, on-site sewage",
	Source:   "30 Texas Administrative Code § 285.91(1)",
	Standing: "published",
	Matched:  "the textures of each class, from memory",
	Rows: []Row{
		{"class Ia", 0.50 * gallonPerDayPerSF, []string{"gravel"}},
		{"class Ib", 0.38 * gallonPerDayPerSF, []string{"coarse sand", "sand", "fine sand", "loamy sand"}},
		{"class II", 0.25 * gallonPerDayPerSF, []string{"sandy loam", "loam"}},
		{"class III", 0.20 * gallonPerDayPerSF, []string{"silt loam", "silt", "sandy clay loam", "clay loam", "silty clay loam", "sandy clay"}},
		{"class IV", 0.10 * gallonPerDayPerSF, []string{"silty clay", "clay"}},
	},
}

// perHundredGallons gives the rate from the square feet wanted for 100 gallons a
// day.
func perHundredGallons(squareFeet float64) float64 { return 100 / squareFeet * gallonPerDayPerSF }
