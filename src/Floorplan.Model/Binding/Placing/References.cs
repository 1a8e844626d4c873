using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax.Values;
using Floorplan.Model.Binding.Names;
using Floorplan.Model.Shapes;

namespace Floorplan.Model.Binding.Placing;

/// <summary>Checks the names that places refer to, before any place is worked out.</summary>
internal sealed class References(NameTable names, Reports reports)
{
    public void Check(Placeable thing)
    {
        foreach (var term in thing.Place)
        {
            if (term.Other() is { } name)
            {
                CheckOne(thing, term, name);
            }
        }
    }

    private void CheckOne(Placeable thing, PlaceTerm term, NameSyntax name)
    {
        var other = names.Find(name.Text);
        if (other is null)
        {
            thing.Failed = true;
            string? help = reports.Near(name.Text, names.All.Select(n => n.Id));
            reports.Error("unknown-name", $"there is nothing called `{name.Text}` to place `{thing.Id}` by", name.Span, help
                ?? "check the spelling, or place it from a wall instead");
        }
        else if (other.Room is null && other.Placeable is null)
        {
            // It was given but has no place of its own; where that is a mistake, it is reported there.
            thing.Failed = true;
        }
        else if (term is BesideTerm beside
            && thing.Wall is null
            && other.Placeable is { Wall: null } placed
            && placed.Room.Id != thing.Room.Id)
        {
            thing.Failed = true;
            reports.Error(
                "thing-in-other-room",
                $"`{thing.Id}` is in `{thing.Room.Id}` but is placed {beside.Direction.Side.Word()} of `{other.Id}`, which is in "
                    + $"`{placed.Room.Id}`",
                name.Span,
                $"place it by something in `{thing.Room.Id}`, or use `in line with {other.Id}`",
                new RelatedSpan(other.Span, $"`{other.Id}` is here"));
        }
    }
}
