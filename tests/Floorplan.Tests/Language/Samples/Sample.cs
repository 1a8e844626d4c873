using Floorplan.Language.Syntax;
using Floorplan.Language.Text;

namespace Floorplan.Tests.Language.Samples;

/// <summary>Plans that the language tests read, and files of the repository.</summary>
internal static class Sample
{
    public static string TarnFoot { get; } = Read("tests/Floorplan.Tests/Language/Samples/tarn-foot.unit");

    public static string EveryDetail { get; } = Read("tests/Floorplan.Tests/Language/Samples/every-detail.unit");

    public static SyntaxTree Parse(string text) => SyntaxTree.Parse(new SourceText(text, "unit.unit"));

    public static string Read(string path) => File.ReadAllText(At(path));

    public static string At(string path) => Path.Combine(Root(), path);

    private static string Root()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Floorplan.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("the tests run outside the repository");
    }
}
