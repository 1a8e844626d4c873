using Floorplan.Language.Text;

namespace Floorplan.Drawing.Frames;

/// <summary>Why a sheet is not drawn: the plan asks for a paper or a scale that cannot hold it.</summary>
/// <param name="Sheet">Its number.</param>
/// <param name="Message">One sentence without a full stop.</param>
/// <param name="WayOut">What would hold it, without a full stop.</param>
/// <param name="Span">The <c>sheet</c> statement that asks for it.</param>
public sealed record NotDrawn(int Sheet, string Message, string WayOut, SourceSpan Span);
