package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path"
	"path/filepath"
	"slices"
)

// A source is one package's text, and what has been cut out of it.
type source struct {
	set   *token.FileSet
	files map[string]*ast.File
	cuts  []span
}

type span struct{ from, to token.Pos }

func parse(folder string) (*source, error) {
	s := &source{token.NewFileSet(), map[string]*ast.File{}, nil}
	names, err := filepath.Glob(filepath.Join(folder, "*.go"))
	if err != nil {
		return nil, err
	}
	for _, name := range names {
		if s.files[name], err = parser.ParseFile(s.set, name, nil, parser.ParseComments); err != nil {
			return nil, err
		}
	}
	return s, nil
}

func (s *source) cut(from, to token.Pos) { s.cuts = append(s.cuts, span{from, to}) }

// isCut tells whether a place lies in what has been cut out.
func (s *source) isCut(at token.Pos) bool {
	return slices.ContainsFunc(s.cuts, func(c span) bool { return c.from <= at && at < c.to })
}

// value returns what the package's variable of a name starts as, nil for none.
func (s *source) value(name string) ast.Expr {
	for _, p := range s.parts() {
		if spec, ok := p.node.(*ast.ValueSpec); ok && spec.Names[0].Name == name && len(spec.Values) == 1 {
			return spec.Values[0]
		}
	}
	return nil
}

// A part is a function or a variable's line, that can go if nothing names it.
type part struct {
	node  ast.Node
	from  token.Pos
	names []string // none for one that stays
}

// parts lists what stands at the top of all files, but for imports.
func (s *source) parts() []part {
	var all []part
	for _, file := range s.files {
		for _, d := range file.Decls {
			switch d := d.(type) {
			case *ast.FuncDecl:
				p := part{node: d, from: d.Pos()}
				if d.Recv == nil && d.Name.Name != "init" && !d.Name.IsExported() {
					p.names = []string{d.Name.Name}
				}
				if d.Doc != nil {
					p.from = d.Doc.Pos()
				}
				all = append(all, p)
			case *ast.GenDecl:
				for _, spec := range d.Specs {
					p := part{node: spec, from: spec.Pos()}
					if v, ok := spec.(*ast.ValueSpec); ok && d.Tok == token.VAR && d.Lparen.IsValid() {
						for _, name := range v.Names {
							p.names = append(p.names, name.Name)
						}
					}
					if d.Tok != token.IMPORT {
						all = append(all, p)
					}
				}
			}
		}
	}
	return all
}

// prune cuts out what nothing that stays names, then the imports that are left
// over, and writes the files. Names are taken as they are spelled: one that is
// also a field or a local variable stays, which does no harm.
func (s *source) prune() error {
	parts := s.parts()
	named := map[string]bool{}
	stays := make([]bool, len(parts))
	for again := true; again; {
		again = false
		for i, p := range parts {
			if stays[i] || p.names != nil && !slices.ContainsFunc(p.names, func(n string) bool { return named[n] || ast.IsExported(n) || n == "_" }) {
				continue
			}
			stays[i], again = true, true
			ast.Inspect(p.node, func(n ast.Node) bool {
				if name, ok := n.(*ast.Ident); ok && !s.isCut(name.Pos()) {
					named[name.Name] = true
				}
				return true
			})
		}
	}
	for i, p := range parts {
		if !stays[i] {
			s.cut(p.from, p.node.End())
		}
	}
	for _, file := range s.files {
		s.pruneImports(file)
	}
	return s.write()
}

func (s *source) pruneImports(file *ast.File) {
	used := map[string]bool{}
	ast.Inspect(file, func(n ast.Node) bool {
		if of, ok := n.(*ast.SelectorExpr); ok && !s.isCut(of.Pos()) {
			if name, ok := of.X.(*ast.Ident); ok {
				used[name.Name] = true
			}
		}
		return true
	})
	for _, spec := range file.Imports {
		name := path.Base(spec.Path.Value[1 : len(spec.Path.Value)-1])
		if spec.Name != nil {
			name = spec.Name.Name
		}
		if !used[name] {
			s.cut(spec.Pos(), spec.End())
		}
	}
}

// write puts the files back without what has been cut out.
func (s *source) write() error {
	for name, file := range s.files {
		text, err := os.ReadFile(name)
		if err != nil {
			return err
		}
		at := s.set.File(file.Pos())
		var kept []byte
		for i, c := range text {
			if !s.isCut(at.Pos(i)) {
				kept = append(kept, c)
			}
		}
		if err := os.WriteFile(name, kept, 0o644); err != nil {
			return err
		}
	}
	return nil
}
