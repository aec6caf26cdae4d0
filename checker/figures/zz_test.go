package figures_test
import ("testing";"math";"greysill/checker/design";"greysill/checker/figures";"strconv")
func BenchmarkZZ(b *testing.B){
 ring:=func(n int, cx,cy,r float64) []design.Point { var ps []design.Point; for i:=0;i<n;i++ { a:=2*math.Pi*float64(i)/float64(n); rr:=r*(1+0.6*math.Sin(float64(i)*1.7)); ps=append(ps,design.Point{cx+rr*math.Cos(a),cy+rr*math.Sin(a)}) }; return ps }
 d:=&design.Design{}
 d.Site.Boundary=ring(500,0,0,100)
 for i:=0;i<5000;i++ { d.Site.Levels=append(d.Site.Levels,design.Spot{float64(i%71)*3.01-100,float64(i/71)*3.07-100,float64(i%7)}) }
 for i:=0;i<20;i++ { d.Parts=append(d.Parts,design.Part{ID:"p"+strconv.Itoa(i),Kind:"planted gravel bed",Pointer:"/parts/0",Shape:design.Shape{Outline:ring(490,float64(i*7%90),float64(i*13%90),30)}, Floor: nil}) }
 for i:=0;i<20;i++ { d.Site.Features=append(d.Site.Features,design.Feature{ID:"f"+strconv.Itoa(i),Kind:"stream",Pointer:"/site/features/0",Shape:design.Shape{Path:ring(490,float64(i*7%90),float64(i*13%90),60)}}) }
 for b.Loop() { figures.Compute(d) }
}
