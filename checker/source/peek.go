package source

import (
	"bytes"

	"github.com/go-json-experiment/json/jsontext"
)

// Peek gives the text that the object in a JSON text has under a name, "" when
// it has none. It reads no further than that; an error says that the text is no
// JSON up to there.
func Peek(text []byte, name string) (string, error) {
	d := jsontext.NewDecoder(bytes.NewBuffer(text), jsontext.AllowDuplicateNames(true))
	if d.PeekKind() != '{' {
		return "", d.SkipValue()
	}
	_, err := d.ReadToken()
	for err == nil {
		var token jsontext.Token
		if token, err = d.ReadToken(); err != nil || token.Kind() == '}' {
			return "", err
		}
		if token.String() != name {
			err = d.SkipValue()
			continue
		}
		if token, err = d.ReadToken(); err == nil && token.Kind() == '"' {
			return token.String(), nil
		}
		return "", err
	}
	return "", err
}
