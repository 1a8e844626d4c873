namespace Floorplan.Model.Details;

/// <summary>One detail of a thing in words.</summary>
/// <param name="Word">What it is called, such as <c>weight empty</c>.</param>
/// <param name="Value">As printed, with its unit; <see cref="SaidThings.Yes"/> for one that is said by its words alone.</param>
/// <param name="ToldByBox">The box of the thing tells of it too, so that two plans are compared by that.</param>
public sealed record ThingDetail(string Word, string Value, bool ToldByBox = false);
