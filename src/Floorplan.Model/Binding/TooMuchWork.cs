using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;

namespace Floorplan.Model.Binding;

/// <summary>A plan whose check takes more work than one may is refused whole: half of the rules would say less than they seem to.</summary>
public static class TooMuchWork
{
    public static Diagnostic Of(SourceText source)
    {
        int end = source.Content.AsSpan().IndexOfAny('\r', '\n');
        return new Diagnostic(
            Severity.Error, "too-much-work",
            $"checking this plan takes more than {PlanBounds.MostMillionSteps} million steps of searching, so it is not checked",
            new SourceSpan(source, 0, end < 0 ? source.Content.Length : end),
            "split the plan into several files; many stops of flows among many things take most, then many corners in one room");
    }
}
