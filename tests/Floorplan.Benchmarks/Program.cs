using System.Globalization;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Floorplan.Benchmarks;

switch (args)
{
    case ["scaling", .. var sizes]:
        Scaling.Run([.. sizes.Select(s => int.Parse(s, CultureInfo.InvariantCulture))]);
        break;
    case ["report"]:
        Report.Run();
        break;
    case ["stages", var plan]:
        Stages.Run(int.TryParse(plan, CultureInfo.InvariantCulture, out int count)
            ? PlanGenerator.Make(count)
            : File.ReadAllText(plan), 6000);
        break;
    case ["edits", var plan]:
        Edits.Run(int.TryParse(plan, CultureInfo.InvariantCulture, out int benches)
            ? PlanGenerator.Make(benches)
            : File.ReadAllText(plan), 1);
        break;
    case ["day"]:
        DayRuns.Run();
        break;
    case ["cold", var program, .. var arguments]:
        ColdCommand.Run(program, arguments);
        break;
    case ["processes", var published, var built, var plan]:
        WholeProcess.Run(published, built, plan);
        break;
    case ["loop", var plan, var seconds]:
        WarmLoop.Run(int.TryParse(plan, CultureInfo.InvariantCulture, out int stations)
            ? PlanGenerator.Make(stations)
            : File.ReadAllText(plan), double.Parse(seconds, CultureInfo.InvariantCulture));
        break;
    case ["plan", var size]:
        Console.Write(PlanGenerator.Make(int.Parse(size, CultureInfo.InvariantCulture)));
        break;
    case ["labels", var templates]:
        LabelReport.Run(templates);
        break;
    case ["invented", var which]:
        Console.Write(InventedPlans.Make(int.Parse(which, CultureInfo.InvariantCulture)));
        break;
    default:
        // In this process, so that it runs without fetching and building a project of its own.
        var job = Job.Default.WithToolchain(InProcessEmitToolchain.Instance).WithWarmupCount(5).WithIterationCount(12);
        BenchmarkSwitcher.FromAssembly(typeof(Pipeline).Assembly).Run(args, DefaultConfig.Instance.AddJob(job));
        break;
}
