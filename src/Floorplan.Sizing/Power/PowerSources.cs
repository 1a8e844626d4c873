using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power;

/// <summary>Where the figures of power come from that both workings and checks name.</summary>
public static class PowerSources
{
    public static readonly Source UsContinuous = new(
        "NEC 210.19 and 210.20: 125 % of continuous loads, so a breaker carries 80 % for hours", Origin.FoundInSecondaryCopy,
        Force.ModelCode);

    public static readonly Source IecDevice = new(
        "IEC 60364-4-43, 433.1: load current, not more than the device, not more than the cable carries", Origin.FoundInSecondaryCopy,
        Force.ModelCode);

    public static readonly Source UsDemand = new(
        "NEC 220.56, kitchen equipment with water heaters, not room heat; taken for this line too", Origin.FoundInSecondaryCopy,
        Force.ModelCode);

    public static readonly Source Diversity = new(
        "diversity for a small shop, Electrician's Guide Table 6.2: light 90 %; machines 100, 80, 60 %; instant heaters 100, 100, 25 %; "
            + "sockets 100, 75 %", Origin.FoundInPublicCopy);
}
