package text

var spanish = map[string]string{}
