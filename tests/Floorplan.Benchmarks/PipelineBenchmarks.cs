using BenchmarkDotNet.Attributes;
using Floorplan.Checks.Findings;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Sizing;

namespace Floorplan.Benchmarks;

/// <summary>A plan of 40 stations in a warm process: the whole way, and each stage.</summary>
[MemoryDiagnoser]
public class PipelineBenchmarks
{
    private const int Stations = 40;

    private string text = "";
    private string edited = "";
    private SyntaxTree tree = null!;
    private Plan plan = null!;
    private PlanFacts facts = null!;
    private IReadOnlyList<Finding> findings = [];
    private IReadOnlyList<SheetScene> sheets = [];
    private bool even;

    [GlobalSetup]
    public void Prepare()
    {
        text = PlanGenerator.Make(Stations);
        edited = text.Replace("600 x 1200 x 900", "600 x 1200 x 901", StringComparison.Ordinal);
        tree = Pipeline.Parse(text);
        plan = Pipeline.Bind(tree);
        facts = Pipeline.Facts(plan);
        findings = Pipeline.Check(facts);
        sheets = Pipeline.Draw(facts, findings);
    }

    [Benchmark(Baseline = true)]
    public int TextToSheets() => Pipeline.All(text);

    /// <summary>One character changes to and fro, as while typing; everything is worked out again.</summary>
    [Benchmark]
    public int OneCharacterEdit()
    {
        even = !even;
        return Pipeline.All(even ? edited : text);
    }

    [Benchmark]
    public SyntaxTree Parse() => Pipeline.Parse(text);

    [Benchmark]
    public Plan Bind() => Pipeline.Bind(tree);

    [Benchmark]
    public PlanFacts Facts() => Pipeline.Facts(plan);

    [Benchmark]
    public IReadOnlyList<Finding> Check() => Pipeline.Check(facts);

    [Benchmark]
    public IReadOnlyList<SheetScene> Draw() => Pipeline.Draw(facts, findings);

    [Benchmark]
    public int WriteSvg() => Pipeline.Write(sheets);
}
