// Command weigh compares the program with the floor, both as a good host sends
// them, and fails where the program has grown past its budget.
package main

import (
	"fmt"
	"log"
	"os"
	"sync"

	"github.com/andybalholm/brotli"
)

// budget is how many times the floor the program may weigh.
const budget = 1.5

func main() {
	if len(os.Args) != 3 {
		log.Fatal("weigh PROGRAM.wasm FLOOR.wasm")
	}
	var raw, sent [2]int
	var wait sync.WaitGroup
	for i, name := range os.Args[1:] {
		wait.Go(func() { raw[i], sent[i] = weigh(name) })
	}
	wait.Wait()
	ratio := float64(sent[0]) / float64(sent[1])
	fmt.Printf("program %9d bytes, brotli 11 %8d\nfloor   %9d bytes, brotli 11 %8d\nratio %.3f, budget %.2f\n", raw[0], sent[0], raw[1], sent[1], ratio, budget)
	if ratio > budget {
		log.Fatal("the program is over its budget")
	}
}

func weigh(name string) (raw, sent int) {
	content, err := os.ReadFile(name)
	if err != nil {
		log.Fatal(err)
	}
	if packed, err := os.Stat(name + ".br"); err == nil { // as the site sends it
		return len(content), int(packed.Size())
	}
	var n count
	w := brotli.NewWriterOptions(&n, brotli.WriterOptions{Quality: brotli.BestCompression, LGWin: 24})
	if _, err := w.Write(content); err != nil {
		log.Fatal(err)
	}
	if err := w.Close(); err != nil {
		log.Fatal(err)
	}
	return len(content), int(n)
}

type count int

func (n *count) Write(p []byte) (int, error) {
	*n += count(len(p))
	return len(p), nil
}
