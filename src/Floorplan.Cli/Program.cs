using Floorplan.Cli;
using Floorplan.Cli.Hosting;

// The process's own console meets the program here and nowhere else.
using var host = Host.OfProcess();
return App.Run(args, host);
