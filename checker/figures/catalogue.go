package figures

import "slices"

// tables are all lists with what fills them, in the order of reports and of
// the generated reference.
var tables = slices.Concat(
	[]table{planTable, upkeepTable, systemTable, coldSeasonTable, demandTable, inflowTable, fixtureTable, surgeTable, stormTable, partTable, flowTable, routeTable, diverterTable, bedTable,
		layerTable, bedFlowTable, headLossTable, effluentTable, bedAreaTable, bedWinterTable, rootTable,
		reachTable, pipeFlowTable, coverTable, crossingTable, serviceTable, dugServiceTable, digTable, pipeTable, joinTable, cleanoutTable, cutTable, constructionTable, licensedTable, dischargeTable, openWaterTable, holdingTable,
		settlingTable, pondTable, spillwayTable, soakageTable, soakageAreaTable, monthTable, frostTable},
	quantityTables,
	clearanceTables,
)

// Catalogue lists every list of the rule input. The order is the order of
// reports and of the generated reference.
var Catalogue = catalogue()

func catalogue() []*List {
	lists := make([]*List, len(tables))
	for i, t := range tables {
		lists[i] = t.list
	}
	return lists
}
