# METADATA
# title: The flow is small enough for a class 2 system.
# description: >-
#   A leaching pit takes up only so much. Above this flow, greywater needs a sewage system of another class and
#   another permit. The code counts 200 L a day for each fixture unit by a table of its own; that table was not read,
#   and the International Plumbing Code's units stand in for it, so ask for the authority's count.
# custom:
#   subjects: demand
#   level: warn
#   measures:
#     - {field: daily_flow_by_occupants, bound: at most, limit: ontario_class_two_flow}
#     - {field: fixture_units_ipc, bound: at most, limit: ontario_class_two_units}
#   remedy: >-
#     Leave fixtures out until the flow and the fixture units are within the limits, or apply for a system of another
#     class: as drawn, occupants give {daily_flow_by_occupants} and there are {fixture_units_ipc} fixture units.
#   sources:
#     - title: Ontario Building Code, Part 8, as a health unit restates it
#       place: 8.4.1
#       standing: published
package greysill.flow.class_two

import rego.v2

proved contains d.subject if {
	some d in input.demand
	d.daily_flow_by_occupants <= data.limits.ontario_class_two_flow.value
	d.fixture_units_ipc <= data.limits.ontario_class_two_units.value
}
