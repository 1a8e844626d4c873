using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Text;
using Floorplan.Language.Tokens;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Binding.Rates;
using Floorplan.Model.Rates;

namespace Floorplan.Model.Binding.Reading;

/// <summary>Reads all statements of a plan into a draft. Null when there is no usable shell.</summary>
internal sealed class PlanReader(SyntaxTree tree, IPlanFiles files, Reports reports)
{
    /// <summary>Sandwich panel, common practice; used where the plan does not say.</summary>
    private static readonly Length UsualPartition = Length.FromMillimetres(80);

    /// <summary>Partitions thicker than this are a slip; own bound.</summary>
    private static readonly Length ThickestPartition = Length.FromMillimetres(1000);

    private readonly KindTable kinds = new(reports);

    public PlanDraft? Read()
    {
        var shell = Only<ShellStatement>();
        var head = Only<PlanStatement>();
        var partitions = Only<PartitionsStatement>();
        var day = Only<DayStatement>();
        foreach (var kind in tree.Statements.OfType<StationStatement>().Where(s => s.Keyword.Text == "kind"))
        {
            kinds.Add(kind);
        }

        new UsedFiles(files, kinds, tree.Units, reports).Follow(tree);
        if (shell is null)
        {
            ReportNoShell();
            return null;
        }

        if (new ShellReader(reports).Read(shell) is not { } built)
        {
            return null;
        }

        var said = HeadReader.Read(head, tree.Units, tree.Source.Path) with
        {
            Rates = new RatesReader(files, reports).Read(head?.Rates, tree.Source),
        };
        var draft = new PlanDraft(tree.Source, said, built)
        {
            PartitionThickness = ThicknessOf(partitions),
            PartitionHeight = partitions?.Height?.Value,
            PartitionBuild = partitions?.Build?.Text ?? "",
        };
        ReadDay(draft, day);
        var reader = new StatementReader(draft, kinds, reports);
        foreach (var statement in tree.Statements)
        {
            reader.Read(statement);
        }

        return draft;
    }

    private void ReportNoShell()
    {
        var start = new SourceSpan(tree.Source, 0, 0);
        if (tree.Tokens.All(t => t.Kind is TokenKind.Space or TokenKind.NewLine or TokenKind.Comment))
        {
            reports.Error(
                "empty-plan", "there is nothing in this plan yet", start,
                "start with a line such as `shell container 20 ft standard`, or from a template: `floorplan new` lists them");
        }
        else
        {
            reports.Error(
                "shell-missing", "there is no `shell`, so there is nothing to build in", start,
                "add a line such as `shell container 20 ft standard` or `shell shed "
                    + $"{reports.Example("8000 x 5000 x 2700", "26 ft x 16 ft x 9 ft")}`");
        }
    }

    // Of statements that a plan has once the first counts.
    private T? Only<T>()
        where T : Statement
    {
        T? first = null;
        foreach (var statement in tree.Statements.OfType<T>())
        {
            if (first is null)
            {
                first = statement;
                continue;
            }

            reports.Error(
                "given-twice",
                $"`{statement.Keyword.Text}` is given twice",
                statement.HeadSpan,
                "put all of it into one statement",
                new RelatedSpan(first.HeadSpan, "first given here"));
        }

        return first;
    }

    private Length ThicknessOf(PartitionsStatement? partitions)
    {
        if (partitions?.Thickness is not { } thickness)
        {
            return UsualPartition;
        }

        if (thickness.Value <= Length.Zero || thickness.Value > ThickestPartition)
        {
            reports.Error(
                "partition-thickness",
                $"partitions are between {reports.Text(Length.FromMillimetres(1))} and {reports.Text(ThickestPartition)} thick",
                thickness.Span, $"write such as `partitions thickness {reports.Example("80 mm", "3 in")}`");
            return UsualPartition;
        }

        return thickness.Value;
    }

    /// <summary>A price without a unit is of one piece.</summary>
    private static Rate Money(MoneySyntax m)
        => new(m.Of.Text, m.Per?.Text ?? "each", (double)m.Amount.Value, (double)m.Amount.Value, m.Span);

    private static void ReadDay(PlanDraft draft, DayStatement? day)
    {
        if (day is null)
        {
            return;
        }

        draft.Day = new Day(
            [.. day.Targets.Select(t => new DayTarget(t.Amount.Value, t.Hours?.Value))], new Dictionary<string, int>(), day.HeadSpan)
        {
            ToiletsElsewhere = (int)Math.Clamp(day.ToiletsElsewhere?.Value ?? 0, 0, ushort.MaxValue),
            ChangingElsewhere = day.ChangingElsewhere,
            Breaks = day.Breaks?.Value,
            Changeover = day.Changeover?.Value,
            Arrives = day.Arrives?.Load?.Value,
            ArrivesBeforeWork = day.Arrives is { Load: null },
            StartUp = day.StartUp?.Value,
            WashDown = day.WashDown?.Value,
            HandWash = day.HandWash?.Value,
            Rates = [.. day.Rates.Concat(day.Prices).Select(Money)],
        };
        draft.Helps.AddRange(
            day.Helps.Select(h => (new NameRef(h.Where.Text, h.Where.Span), new NameRef(h.From.Text, h.From.Span))));
        draft.Crew.AddRange(
            day.Crew.Select(c => (new NameRef(c.Where.Text, c.Where.Span), (int)Math.Clamp(c.Count.Value, 0, ushort.MaxValue))));
    }
}
