package rulebook

import (
	"context"
	"io/fs"
	"path"
	"sync"
)

// Books gives the rule book in force in each region: the base, the region's
// amendment where the base folder has one, and then local amendments. Each is
// loaded when it is first asked for. It is safe for concurrent use.
type Books struct {
	base  Layer
	local []Layer

	mutex sync.Mutex
	made  map[string]func() (*Book, error)
}

// NewBooks lays local amendments upon a base whose folder may hold amendments of
// regions, each in amendments/CODE.
func NewBooks(base Layer, local ...Layer) *Books {
	return &Books{base: base, local: local, made: map[string]func() (*Book, error){}}
}

// amendments is the folder of regional amendments in a base.
const amendments = "amendments"

// In gives the book in force in a region, an ISO 3166-2 code; the base and the
// local amendments where the region has none of its own. An error is
// source.Problems: everything that is wrong with the rules.
func (b *Books) In(ctx context.Context, region string) (*Book, error) {
	if !b.Amended(region) {
		region = ""
	}
	b.mutex.Lock()
	make, known := b.made[region]
	if !known {
		make = sync.OnceValues(func() (*Book, error) { return Load(context.WithoutCancel(ctx), b.Layers(region)...) })
		b.made[region] = make
	}
	b.mutex.Unlock()
	return make()
}

// Amended reports whether the base has an amendment for a region.
func (b *Books) Amended(region string) bool {
	if !regionForm.MatchString(region) {
		return false
	}
	_, err := fs.Stat(b.base.FS, path.Join(amendments, region, "amendment.json"))
	return err == nil
}

// Layers gives the layers of the book in a region, the base first.
func (b *Books) Layers(region string) []Layer {
	layers := []Layer{b.base}
	if b.Amended(region) {
		layers = append(layers, b.regional(region))
	}
	return append(layers, b.local...)
}

func (b *Books) regional(region string) Layer {
	folder := path.Join(amendments, region)
	sub, err := fs.Sub(b.base.FS, folder)
	if err != nil {
		panic(err) // the region's form leaves no room for an invalid path
	}
	return Layer{Name: path.Join(b.base.Name, folder), FS: sub}
}

// Regions gives the codes of the regions that the base has amendments for,
// sorted.
func (b *Books) Regions() []string {
	entries, err := fs.ReadDir(b.base.FS, amendments)
	if err != nil {
		return nil
	}
	var regions []string
	for _, e := range entries {
		if b.Amended(e.Name()) {
			regions = append(regions, e.Name())
		}
	}
	return regions
}
