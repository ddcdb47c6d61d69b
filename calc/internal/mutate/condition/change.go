package condition

import (
	"fmt"
	"go/ast"
	"go/token"
)

// Other operators, and what an operand is taken for that is dropped.
var (
	logical = map[token.Token]struct {
		other   token.Token
		dropped string
	}{token.LAND: {token.LOR, "true"}, token.LOR: {token.LAND, "false"}}
	equality = map[token.Token]token.Token{token.EQL: token.NEQ, token.NEQ: token.EQL}
	ordering = map[token.Token]struct {
		other token.Token
		call  string
	}{
		token.LSS: {token.LEQ, "mutantLess"}, token.LEQ: {token.LSS, "mutantMost"},
		token.GTR: {token.GEQ, "mutantMore"}, token.GEQ: {token.GTR, "mutantLeast"},
	}
)

// negate turns a whole condition about. One that is an equality is turned about
// by its operator already.
func (s *schema) negate(e ast.Expr) {
	if b, ok := ast.Unparen(e).(*ast.BinaryExpr); ok && equality[b.Op] != 0 {
		return
	}
	from := s.text(e)
	s.turn(e, s.add(e.Pos(), from, "!("+from+")"))
}

// turn wraps an expression so that a mutant turns it about.
func (s *schema) turn(e ast.Expr, id int) {
	if id != 0 {
		s.wrap(e, "((", fmt.Sprintf(") != mutantOn(%d))", id))
	}
}

func (s *schema) binary(n *ast.BinaryExpr) {
	other := *n
	if op, ok := logical[n.Op]; ok {
		other.Op = op.other
		// Of a and b the other is had by turning about both and what is made of
		// them, which evaluates b when it should.
		id := s.add(n.OpPos, s.text(n), s.text(&other))
		for _, e := range []ast.Expr{n, n.X, n.Y} {
			s.turn(e, id)
		}
		s.drop(n.X, n.Op)
		s.drop(n.Y, n.Op)
	}
	if op, ok := equality[n.Op]; ok {
		other.Op = op
		s.turn(n, s.add(n.OpPos, s.text(n), s.text(&other)))
	}
	if op, ok := ordering[n.Op]; ok {
		other.Op = op.other
		if id := s.add(n.OpPos, s.text(n), s.text(&other)); id != 0 {
			s.wrap(n, fmt.Sprintf("%s(%d, ", op.call, id), ")")
			s.edits = append(s.edits, edit{at: s.offset(n.OpPos), cut: len(n.Op.String()), text: ","})
		}
	}
}

// drop wraps an operand so that a mutant drops it. The number is asked for only
// where the operand decides: elsewhere dropping it changes nothing, and a test
// that comes by has not met the mutant. Of a longer chain each operand is dropped
// by itself: a test that misses one misses two together.
func (s *schema) drop(e ast.Expr, op token.Token) {
	if b, ok := ast.Unparen(e).(*ast.BinaryExpr); ok && b.Op == op {
		return
	}
	to := logical[op].dropped
	id := s.add(e.Pos(), s.text(e), to)
	switch {
	case id == 0:
	case to == "true":
		s.wrap(e, "((", fmt.Sprintf(") || mutantOn(%d))", id))
	default:
		s.wrap(e, "((", fmt.Sprintf(") && !mutantOn(%d))", id))
	}
}

// helper is the text of a file that is compiled along with a package: it tells
// which mutant is awake, and on demand which ones a run has met. An order is
// asked for its mutant only between equals, where alone they differ.
const helper = `package %s

import (
	"cmp"
	"fmt"
	"os"
	"strconv"
	"sync/atomic"
)

var (
	mutant, _  = strconv.Atoi(os.Getenv("MUTANT"))
	mutantMet  = mutantFile()
	mutantSeen [%d]atomic.Bool
)

func mutantFile() *os.File {
	name := os.Getenv("MUTANT_MET")
	if name == "" {
		return nil
	}
	f, err := os.Create(name)
	if err != nil {
		panic(err)
	}
	return f
}

func mutantOn(id int) bool {
	if mutantMet != nil && !mutantSeen[id].Swap(true) {
		if _, err := fmt.Fprintln(mutantMet, id); err != nil {
			panic(err)
		}
	}
	return id == mutant
}

func mutantLess[T cmp.Ordered](id int, x, y T) bool  { return x < y || x == y && mutantOn(id) }
func mutantMost[T cmp.Ordered](id int, x, y T) bool  { return x < y || x == y && !mutantOn(id) }
func mutantMore[T cmp.Ordered](id int, x, y T) bool  { return x > y || x == y && mutantOn(id) }
func mutantLeast[T cmp.Ordered](id int, x, y T) bool { return x > y || x == y && !mutantOn(id) }
`
