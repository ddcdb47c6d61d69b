package site

import "encoding/json"

type manifest struct {
	ID         string     `json:"id"`
	Name       string     `json:"name"`
	ShortName  string     `json:"short_name"`
	About      string     `json:"description"`
	Lang       string     `json:"lang"`
	Dir        string     `json:"dir"`
	Start      string     `json:"start_url"`
	Scope      string     `json:"scope"`
	Display    string     `json:"display"`
	Background string     `json:"background_color"`
	Theme      string     `json:"theme_color"`
	Icons      []icon     `json:"icons"`
	Shortcuts  []shortcut `json:"shortcuts,omitempty"`
}

type icon struct {
	Src     string `json:"src"`
	Type    string `json:"type"`
	Sizes   string `json:"sizes"`
	Purpose string `json:"purpose"`
}

type shortcut struct {
	Name string `json:"name"`
	URL  string `json:"url"`
}

// manifest replaces go-app's, whose scope is always the root of the host and
// which knows no id and no shortcuts.
func (o Options) manifest() ([]byte, error) {
	h, at := o.Handler, base(o.Base).Resolve
	m := manifest{
		ID: o.Base, Start: o.Base, Scope: o.Base,
		Name: h.Name, ShortName: h.ShortName, About: h.Description, Lang: h.Lang, Dir: "ltr",
		Display: "standalone", Background: h.BackgroundColor, Theme: h.ThemeColor,
		Icons: []icon{
			{at(h.Icon.SVG), "image/svg+xml", "any", "any"},
			{at(h.Icon.Default), "image/png", "192x192", "any"},
			{at(h.Icon.Large), "image/png", "512x512", "any"},
			{at(h.Icon.Maskable), "image/png", "512x512", "maskable"},
		},
	}
	for _, s := range o.Shortcuts {
		m.Shortcuts = append(m.Shortcuts, shortcut{s.Name, at(s.Route)})
	}
	return json.MarshalIndent(m, "", "  ")
}
