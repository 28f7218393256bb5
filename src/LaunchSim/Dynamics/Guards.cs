namespace LaunchSim.Dynamics;

/// <summary>Where each mode's guard stands among the launch's event functions.</summary>
internal static class Guards
{
    public const int RearTire = 0;
    public const int FrontTire = 1;
    public const int RearTravel = 2;
    public const int FrontTravel = 3;
    public const int RearFloor = 4;
    public const int FrontFloor = 5;
    public const int RearGrip = 6;
    public const int FrontGrip = 7;
    public const int RearSpring = 8;
    public const int FrontSpring = 9;
    public const int RearDamper = 10;
    public const int FrontDamper = 11;
    public const int RearTop = 12;
    public const int RearBottom = 13;
    public const int FrontTop = 14;
    public const int FrontBottom = 15;
    public const int WheelieBar = 16;
    public const int Engine = 17;
    public const int Shift = 18;
    public const int Coupling = 19;
    public const int SecondCoupling = 20;
    public const int LastMark = 21;
    public const int Linkage = 22;
    public const int Count = 23;
}
