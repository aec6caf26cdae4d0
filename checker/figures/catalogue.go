package figures

import "slices"

// tables are all lists with what fills them, in the order of reports and of
// the generated reference.
var tables = slices.Concat(
	[]table{ // the house and its water
		systemTable,
		planTable,
		demandTable,
		inflowTable,
		fixtureTable,
		fixtureFallTable,
		surgeTable,
		stormTable,
		flowTable,
		makeUpTable,
	},
	[]table{ // the site
		coldSeasonTable,
		monthTable,
		frostTable,
		groundTable,
		siteSoilTable,
	},
	[]table{ // where the water goes
		partTable,
		routeTable,
		diverterTable,
		sewerWayTable,
		openWaterTable,
		dischargeTable,
		holdingTable,
	},
	[]table{ // planted gravel beds
		bedTable,
		layerTable,
		bedFlowTable,
		headLossTable,
		effluentTable,
		bedAreaTable,
		bedWinterTable,
		rootTable,
	},
	[]table{ // basins, ponds and what they overflow by
		settlingTable,
		pondTable,
		routingTable,
		waterLevelTable,
		heldLevelTable,
		dropTable,
		fallTable,
		spillwayTable,
		spillwayChannelTable,
	},
	[]table{ // what soaks away
		soakageTable,
		soakageAreaTable,
	},
	[]table{ // pipes
		reachTable,
		pipeTable,
		pipeFlowTable,
		joinTable,
		gapTable,
		coverTable,
		pipeWinterTable,
		cleanoutTable,
	},
	[]table{ // digging and what is in the way
		cutTable,
		constructionTable,
		licensedTable,
		crossingTable,
		serviceTable,
		dugServiceTable,
		digTable,
	},
	[]table{ // upkeep
		upkeepTable,
	},
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
