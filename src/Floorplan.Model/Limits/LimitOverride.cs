using Floorplan.Language.Quantities;
using Floorplan.Language.Text;

namespace Floorplan.Model.Limits;

/// <summary>
/// A <c>limit</c> statement: one published limit set for this plan. Lengths come as <see cref="Length"/>, all else as
/// <see cref="Quantity"/>.
/// </summary>
public sealed record LimitOverride(string Rule, Length? Length, Quantity? Quantity, string Reason, SourceSpan Span);

/// <summary>An <c>accept</c> statement: a named finding at named things, accepted with a reason.</summary>
/// <param name="Things">Ids that the finding must all name; empty accepts every finding of the rule.</param>
public sealed record Acceptance(string Rule, IReadOnlyList<string> Things, string Reason, string By, SourceSpan Span)
{
    /// <summary>The reason, and by whom where that is said.</summary>
    public string Text => By.Length > 0 ? $"{Reason}, {By}" : Reason;
}
