using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cold;

/// <summary>The air that a summer day is sized for, outside or in a room.</summary>
/// <param name="Humidity">From 0 to 1.</param>
internal sealed record DesignAir(double Celsius, double Humidity, FigureInput Temperature, FigureInput Damp)
{
    /// <summary>Where the plan says no climate, C.</summary>
    public const double UsualSummer = 35;

    /// <summary>In rooms that keep no temperature, on a summer day, C.</summary>
    public const double UsualRoom = 25;

    private const double UsualDamp = 0.4;
    private const double RoomDamp = 0.6;
    private const double ColdDamp = 0.9;

    /// <summary>Colder and hotter than any place where people build, C; own bound.</summary>
    private const double Coldest = -60;
    private const double Hottest = 60;

    private static readonly Source Own = new("own assumption", Origin.OwnAssumption);

    /// <summary>For air and ceiling temperatures that mean something.</summary>
    public static bool Fits(double celsius) => celsius is >= Coldest and <= Hottest;

    /// <summary>Whether the plan says its summer day.</summary>
    public static bool IsSummerSaid(Plan plan) => plan.Head.Climate?.Summer is { } summer && Fits(summer.Base);

    public static DesignAir Outside(Plan plan)
    {
        bool isSaid = IsSummerSaid(plan);
        double celsius = isSaid ? plan.Head.Climate!.Summer!.Value.Base : UsualSummer;
        double? damp = isSaid ? plan.Head.Climate!.Humidity?.Base : null;
        string text = QuantityText.Of(celsius, Measure.Temperature, plan.Units);
        string share = Share(damp ?? UsualDamp, plan.Units);
        return new DesignAir(
            celsius, Math.Clamp(damp ?? UsualDamp, 0, 1),
            isSaid ? FigureInput.Said("outside", text, plan.Head.Climate!.Span) : FigureInput.Taken("outside", text, Own),
            damp is not null
                ? FigureInput.Said("humidity outside", share, plan.Head.Climate!.Span)
                : FigureInput.Taken("humidity outside", share, Own));
    }

    /// <param name="room">Null outside.</param>
    public static DesignAir In(Plan plan, Room? room)
    {
        if (room is null)
        {
            return Outside(plan);
        }

        bool isSaid = room.KeepCelsius is { } keep && Fits(keep);
        double celsius = isSaid ? room.KeepCelsius!.Value : UsualRoom;
        double damp = room.Class == HygieneClass.Cold ? ColdDamp : RoomDamp;
        string name = $"temperature in {room.Id}";
        string text = QuantityText.Of(celsius, Measure.Temperature, plan.Units);
        return new DesignAir(
            celsius, damp, isSaid ? FigureInput.Said(name, text, room.Span) : FigureInput.Taken(name, text, Own),
            FigureInput.Taken($"humidity in {room.Id}", Share(damp, plan.Units), Own));
    }

    public (double Celsius, double Humidity) Pair => (Celsius, Humidity);

    /// <summary>What to write for the climate, in the plan's units.</summary>
    public static string ClimateLine(Plan plan)
        => plan.Units == UnitSystem.Metric ? "climate -12 C, 34 C 40 %" : "climate 10 F, 93 F 40 %";

    private static string Share(double share, UnitSystem units) => QuantityText.Of(share, Measure.Ratio, units);
}
