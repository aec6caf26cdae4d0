package report

// The types below are the part of SARIF 2.1.0 that the report uses; the names and
// their meaning are the standard's.

type sarifLog struct {
	Schema  string      `json:"$schema"`
	Version string      `json:"version"`
	Runs    []*sarifRun `json:"runs"`
}

type sarifRun struct {
	Tool        sarifTool         `json:"tool"`
	Invocations []sarifInvocation `json:"invocations"`
	ColumnKind  string            `json:"columnKind"`
	Results     []sarifResult     `json:"results"`
	Properties  *sarifBelonging   `json:"properties,omitempty"`

	index map[string]int // of the rules, by id
}

type sarifBelonging struct {
	InForce string `json:"inForce"`
}

type sarifTool struct {
	Driver sarifDriver `json:"driver"`
}

type sarifDriver struct {
	Name    string      `json:"name"`
	Version string      `json:"version,omitempty"`
	Rules   []sarifRule `json:"rules"`
}

type sarifRule struct {
	ID                   string              `json:"id"`
	ShortDescription     sarifText           `json:"shortDescription"`
	FullDescription      sarifText           `json:"fullDescription"`
	Help                 sarifText           `json:"help"`
	DefaultConfiguration sarifLevel          `json:"defaultConfiguration"`
	Properties           *sarifRuleBelonging `json:"properties,omitempty"`
}

type sarifRuleBelonging struct {
	Tags  []string `json:"tags"`
	SetBy string   `json:"setBy"`
}

type sarifText struct {
	Text     string `json:"text"`
	Markdown string `json:"markdown,omitempty"`
}

type sarifLevel struct {
	Level string `json:"level"`
}

type sarifInvocation struct {
	ExecutionSuccessful bool                `json:"executionSuccessful"`
	Notifications       []sarifNotification `json:"toolExecutionNotifications,omitempty"`
}

type sarifNotification struct {
	Level     string          `json:"level"`
	Message   sarifText       `json:"message"`
	Locations []sarifLocation `json:"locations,omitempty"`
}

type sarifResult struct {
	RuleID           string             `json:"ruleId"`
	RuleIndex        int                `json:"ruleIndex"`
	Kind             string             `json:"kind"`
	Level            string             `json:"level"`
	Message          sarifText          `json:"message"`
	Locations        []sarifLocation    `json:"locations"`
	RelatedLocations []sarifLocation    `json:"relatedLocations,omitempty"`
	Fingerprints     map[string]string  `json:"partialFingerprints"`
	Baseline         string             `json:"baselineState,omitempty"`
	Suppressions     []sarifSuppression `json:"suppressions,omitempty"`
}

type sarifLocation struct {
	Physical sarifPhysical  `json:"physicalLocation"`
	Logical  []sarifLogical `json:"logicalLocations,omitempty"`
	Message  *sarifText     `json:"message,omitempty"`
}

type sarifPhysical struct {
	Artifact sarifArtifact `json:"artifactLocation"`
	Region   *sarifRegion  `json:"region,omitempty"`
}

type sarifArtifact struct {
	URI string `json:"uri"`
}

type sarifRegion struct {
	StartLine   int `json:"startLine"`
	StartColumn int `json:"startColumn"`
}

type sarifLogical struct {
	Name               string `json:"name"`
	FullyQualifiedName string `json:"fullyQualifiedName"`
	Kind               string `json:"kind"`
}

type sarifSuppression struct {
	Kind          string           `json:"kind"`
	Status        string           `json:"status"`
	Justification string           `json:"justification"`
	Properties    sarifSuppressing `json:"properties"`
}

type sarifSuppressing struct {
	Authority string `json:"authority"`
	Reference string `json:"reference"`
	Expires   string `json:"expires"`
}
