#include "cli/run_cli.h"

int main(int argc, char** argv) { return foldyard::run_cli(argc, argv); }
