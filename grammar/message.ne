@preprocessor esmodule
main -> "x"
