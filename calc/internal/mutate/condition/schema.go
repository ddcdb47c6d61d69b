package condition

import (
	"bytes"
	"cmp"
	"go/ast"
	"go/format"
	"go/parser"
	"go/token"
	"slices"
	"strings"
)

// A Mutant is one change of a condition. From and To are the source of the least
// expression that changes, on one line; To is true or false for an operand that
// is dropped.
type Mutant struct {
	id       int
	File     string // from the root of the module
	Line     int
	In       string // the function, Type.method, or variable
	From, To string
}

// A schema is a file in which all mutants stand at once, each asleep until its
// number is called: a package is compiled once for all of them.
//
// Nothing is taken away but operators of order, and no line is added, so that the
// compiler's and the tests' words name the lines of the file as it was.
type schema struct {
	set     *token.FileSet
	mutant  Mutant // what all of the declaration's have in common
	next    *int
	skip    func(line int) bool
	mutants []Mutant
	edits   []edit
}

// An edit puts text at an offset, in place of cut bytes. Of several at one place
// the lowest rank stands first.
type edit struct {
	at, cut, rank int
	text          string
}

// schemaOf returns a file's mutants, numbered on from next, and its text with all
// of them in it. Lines that skip tells are left as they are.
func schemaOf(file string, text []byte, next *int, skip func(line int) bool) ([]Mutant, []byte, error) {
	s := schema{set: token.NewFileSet(), mutant: Mutant{File: file}, next: next, skip: skip}
	parsed, err := parser.ParseFile(s.set, file, text, 0)
	if err != nil {
		return nil, nil, err
	}
	for _, d := range parsed.Decls {
		s.mutant.In = nameOf(d)
		ast.Inspect(d, s.visit)
	}
	slices.SortFunc(s.edits, func(a, b edit) int { return cmp.Or(cmp.Compare(a.at, b.at), cmp.Compare(a.rank, b.rank)) })
	var b bytes.Buffer
	at := 0
	for _, e := range s.edits {
		b.Write(text[at:e.at])
		b.WriteString(e.text)
		at = e.at + e.cut
	}
	b.Write(text[at:])
	return s.mutants, b.Bytes(), nil
}

func nameOf(d ast.Decl) string {
	switch d := d.(type) {
	case *ast.FuncDecl:
		if d.Recv == nil || len(d.Recv.List) == 0 {
			return d.Name.Name
		}
		of := d.Recv.List[0].Type
		for {
			switch t := of.(type) {
			case *ast.StarExpr:
				of = t.X
			case *ast.IndexExpr:
				of = t.X
			case *ast.IndexListExpr:
				of = t.X
			case *ast.Ident:
				return t.Name + "." + d.Name.Name
			default:
				return d.Name.Name
			}
		}
	case *ast.GenDecl:
		for _, spec := range d.Specs {
			if v, ok := spec.(*ast.ValueSpec); ok {
				return v.Names[0].Name
			}
		}
	}
	return ""
}

// visit goes from the outermost expression inward, and wrap counts on that.
func (s *schema) visit(n ast.Node) bool {
	switch n := n.(type) {
	case *ast.GenDecl:
		return n.Tok != token.CONST // a constant can't be asked while running
	case *ast.ArrayType:
		return false // nor can a length
	case *ast.IfStmt:
		s.negate(n.Cond)
	case *ast.SwitchStmt:
		if n.Tag == nil {
			for _, c := range n.Body.List {
				for _, e := range c.(*ast.CaseClause).List {
					s.negate(e)
				}
			}
		}
	case *ast.BinaryExpr:
		s.binary(n)
	}
	return true
}

// add takes a mutant in and returns its number, or 0 where none is wanted.
func (s *schema) add(at token.Pos, from, to string) int {
	m := s.mutant
	m.Line = s.set.Position(at).Line
	if s.skip(m.Line) {
		return 0
	}
	*s.next++
	m.id, m.From, m.To = *s.next, from, to
	s.mutants = append(s.mutants, m)
	return m.id
}

// wrap puts text around an expression, inside of what was put around it before.
func (s *schema) wrap(e ast.Expr, before, after string) {
	rank := len(s.edits) + 1
	s.edits = append(s.edits,
		edit{at: s.offset(e.Pos()), rank: rank, text: before},
		edit{at: s.offset(e.End()), rank: -rank, text: after})
}

func (s *schema) offset(p token.Pos) int { return s.set.Position(p).Offset }

func (s *schema) text(e ast.Expr) string {
	var b bytes.Buffer
	if err := format.Node(&b, s.set, e); err != nil {
		panic(err) // it was parsed from text
	}
	return strings.Join(strings.Fields(b.String()), " ")
}
