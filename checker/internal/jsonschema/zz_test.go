package jsonschema
import ("testing";"greysill/schema"; "encoding/json"; jx "github.com/go-json-experiment/json"; "github.com/go-json-experiment/json/jsontext"; "bytes")
var sink any
type S2 struct {
	Description string            `json:"description"`
	Examples    []jsontext.Value `json:"examples"`
	Types  jsontext.Value     `json:"type"`
	Const  *string   `json:"const"`
	Enum   []string  `json:"enum"`
	AllOf  []*S2 `json:"allOf"`
	OneOf  []*S2 `json:"oneOf"`
	If     *S2   `json:"if"`
	Then   *S2   `json:"then"`
	Format string    `json:"format"`
	Pattern   string   `json:"pattern"`
	MinLength int      `json:"minLength"` // in characters
	MaxLength *int     `json:"maxLength"` // in characters
	Minimum   *float64 `json:"minimum"`
	Maximum   *float64 `json:"maximum"`
	Items       *S2 `json:"items"`
	MinItems    int     `json:"minItems"`
	MaxItems    *int    `json:"maxItems"`
	UniqueItems bool    `json:"uniqueItems"` // only among texts
	Properties map[string]*S2 `json:"properties"`
	Required   []string           `json:"required"`
	Additional *bool              `json:"additionalProperties"`
	RefTo   string `json:"$ref"` // #/$defs/NAME
	Dialect string             `json:"$schema"`
	ID      string             `json:"$id"`
	Title   string             `json:"title"`
	Defs    map[string]*S2 `json:"$defs"`
}
func BenchmarkDec1(b *testing.B){
 text,_:=schema.FS.ReadFile("design.schema.json")
 b.ReportAllocs()
 for b.Loop(){ d := json.NewDecoder(bytes.NewReader(text)); d.DisallowUnknownFields(); var s S2; if err:=d.Decode(&s); err!=nil{b.Fatal(err)}}
}
func BenchmarkDec2(b *testing.B){
 text,_:=schema.FS.ReadFile("design.schema.json")
 b.ReportAllocs()
 for b.Loop(){ var s S2; if err:=jx.Unmarshal(text,&s, jx.RejectUnknownMembers(true)); err!=nil{b.Fatal(err)}}
}
func BenchmarkAny(b *testing.B){
 text,_:=schema.FS.ReadFile("design.schema.json")
 for b.Loop(){ json.Unmarshal(text,&sink)}
}
func BenchmarkTok(b *testing.B){
 text,_:=schema.FS.ReadFile("design.schema.json")
 for b.Loop(){ d:=jsontext.NewDecoder(bytes.NewBuffer(text)); for { if _,err:=d.ReadToken(); err!=nil {break}}}
}
