using BenchmarkDotNet.Attributes;
using Floorplan.Language.Syntax;
using YamlDotNet.RepresentationModel;

namespace Floorplan.Benchmarks;

/// <summary>
/// Reading the same content: a plan with our parser, and the same statements, words and details written as YAML with a general-purpose
/// library.
/// </summary>
[MemoryDiagnoser]
public class ParseBenchmarks
{
    private string plan = "";
    private string yaml = "";

    [Params(40, 1000)]
    public int Stations { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        plan = PlanGenerator.Make(Stations);
        yaml = PlanAsYaml.Write(plan);
    }

    [Benchmark(Baseline = true)]
    public SyntaxTree Plan() => Pipeline.Parse(plan);

    [Benchmark]
    public YamlStream YamlDotNet()
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        return stream;
    }
}
