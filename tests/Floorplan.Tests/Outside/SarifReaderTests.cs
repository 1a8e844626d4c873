using System.Text.Json;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Cli;
using Xunit;

namespace Floorplan.Tests.Outside;

/// <summary>
/// SARIF read by two object models that others generated from the published schema of OASIS SARIF 2.1.0: one says which properties an
/// object has and must have (Python's sarif_om), the other of what type and which words each may be (Go's go-sarif, read as text).
/// </summary>
public class SarifReaderTests
{
    private const string Types = "/usr/share/gocode/src/github.com/haya14busa/go-sarif/sarif/sarif.go";

    private const string Read = """
        import sys, json, re, attr, sarif_om
        go = open(sys.argv[2], encoding="utf-8").read()
        types = {name: dict((j, t) for t, j in re.findall(r'^\t\w+\s+(\S+)\s+`json:"([^",]+)', body, re.M))
                 for name, body in re.findall(r'^type (\w+) struct \{\n(.*?)^\}', go, re.M | re.S)}
        words = {}
        for name, word in re.findall(r'^\t\w+ (\w+) = "([^"]*)"', go, re.M): words.setdefault(name, set()).add(word)
        plain = {"string": str, "int64": int, "float64": (int, float), "bool": bool}
        faults, seen = [], 0
        def look(value, kind, at):
            global seen
            seen += 1
            kind = kind.lstrip("*")
            if kind.startswith("[]"):
                if not isinstance(value, list): faults.append(at + " is no list"); return
                for n, item in enumerate(value): look(item, kind[2:], f"{at}[{n}]")
            elif kind.startswith("map[string]"):
                for key, item in value.items(): look(item, kind[len("map[string]"):], f"{at}.{key}")
            elif kind in types:
                fields = attr.fields(getattr(sarif_om, {"Sarif": "SarifLog"}.get(kind, kind)))
                model = {a.metadata["schema_property_name"]: a.default is attr.NOTHING for a in fields}
                if not isinstance(value, dict): faults.append(at + " is no object"); return
                faults.extend(f"{at} lacks {key}" for key, needed in model.items() if needed and key not in value)
                for key, item in value.items():
                    if kind == "PropertyBag" and key != "tags": continue
                    if key not in types[kind] or key not in model: faults.append(f"{at} has {key}"); continue
                    look(item, types[kind][key], f"{at}.{key}")
            elif kind in words:
                if value not in words[kind]: faults.append(f"{at} is {value}")
            elif not isinstance(value, plain[kind]) or (kind != "bool" and isinstance(value, bool)): faults.append(f"{at} is no {kind}")
        look(json.load(open(sys.argv[1], encoding="utf-8")), "Sarif", "log")
        print(json.dumps({"faults": faults, "seen": seen}))
        """;

    private static readonly Dictionary<string, Func<(string Text, string Has)>> Texts = new()
    {
        ["a sound plan"] = () => (Template, "\"results\""),
        ["a proposed change"] = ()
            => (
                Plans.Good.Replace("swings out, closes itself, opens from inside", "swings out, closes itself", StringComparison.Ordinal),
                "\"fixes\""),
        ["an accepted finding"] = () => (Plans.Overlapping + "\naccept overlap \"agreed\"\n", "\"suppressions\""),
        ["a mistake in the text"] = () => (Plans.Broken, "\"error\""),
    };

    public static TheoryData<string> Kinds => [.. Texts.Keys];

    private static string Template => File.ReadAllText(Repository.At("templates", "poultry-40ft.unit"));

    [SkippableTheory, MemberData(nameof(Kinds))]
    public void What_check_writes_fits_the_published_schema(string kind)
    {
        var (text, has) = Texts[kind]();
        string log = CliRun.WithInput(text, "check", "-", "--output", "sarif").Out;
        Assert.Contains(has, log, StringComparison.Ordinal);

        var (faults, seen) = Faults(log);
        Assert.Empty(faults);
        Assert.True(seen > 500, $"only {seen} values looked at");
    }

    /// <summary>The readers do find what does not fit.</summary>
    [SkippableTheory]
    [InlineData("\"level\": \"note\"", "\"level\": \"nota\"", "is nota")]
    [InlineData("\"level\": \"note\"", "\"levle\": \"note\"", "has levle")]
    [InlineData("\"startLine\": ", "\"startLine\": 0.5, \"endLine\": ", "is no int64")]
    public void A_log_that_does_not_fit_is_told(string right, string wrong, string fault)
    {
        string log = CliRun.WithInput(Template, "check", "-", "--output", "sarif").Out;
        Assert.Contains(right, log, StringComparison.Ordinal);
        Assert.Contains(
            Faults(log.Replace(right, wrong, StringComparison.Ordinal)).Faults, f => f.Contains(fault, StringComparison.Ordinal));
    }

    private static (IReadOnlyList<string> Faults, int Seen) Faults(string log)
    {
        string python = Readers.PythonWith("sarif_om");
        OutsidePrograms.Require(File.Exists(Types), "the Go types of SARIF are not installed");
        using var folder = new TemporaryFolder();
        using var answer = JsonDocument.Parse(Readers.Run(python, "-c", Read, folder.Write("log.sarif", log), Types).Out);
        return (
            [.. answer.RootElement.GetProperty("faults").EnumerateArray().Select(f => f.GetString()!)],
            answer.RootElement.GetProperty("seen").GetInt32());
    }
}
