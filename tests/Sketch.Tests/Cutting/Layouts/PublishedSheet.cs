using System.Globalization;

namespace Sketch.Tests.Cutting.Layouts;

/// <summary>A published problem: the most worth that edge-to-edge cuts get from one sheet.</summary>
/// <param name="Name">Its name in the OR-Library.</param>
/// <param name="Width">The sheet across.</param>
/// <param name="Height">The sheet down.</param>
/// <param name="Pieces">Sides of the pieces, how many copies are allowed, and their worth.</param>
/// <param name="Best">The optimum with the pieces as they stand.</param>
/// <param name="BestTurned">The optimum with quarter turns; null where none is known.</param>
internal sealed record PublishedSheet(
    string Name, int Width, int Height, (int Width, int Height, int Copies, int Worth)[] Pieces, int Best, int? BestTurned)
{
    private const int Unlimited = 9_999;

    /// <summary>
    /// gcut1 to gcut13: J. E. Beasley, J. Opl Res. Soc. 36 (1985) 297-306; data from the OR-Library by way of the ESICUP collection (CC0).
    /// Any number of copies; the worth is the area. Optima for both columns: www.ime.usp.br/~glauber/gcut/ (Cintra, Wakabayashi and
    /// others).
    /// </summary>
    public static readonly PublishedSheet[] Unlimited1985 =
    [
        ByArea("gcut1", 250, 56460, 58136,
            "167x184 114x118 167x152 83x140 70x86 143x166 120x160 66x148 87x141 69x165"),
        ByArea("gcut2", 250, 60536, 60611,
            "120x133 135x186 86x75 103x73 66x85 135x97 91x175 131x176 71x176 153x72 87x148 168x107 118x90 140x109 132x159 152x93 " +
            "135x68 121x158 68x94 155x76"),
        ByArea("gcut3", 250, 61036, 61626,
            "66x80 164x107 64x184 121x86 163x135 85x98 81x102 103x186 152x106 176x139 111x118 69x169 146x133 112x112 133x160 63x129 " +
            "163x152 110x155 96x136 92x142 84x143 119x133 71x71 146x84 93x86 89x86 101x146 172x73 73x169 99x99"),
        ByArea("gcut4", 250, 61698, 62265,
            "139x103 166x99 88x74 174x139 128x109 175x179 62x82 178x87 121x77 125x97 73x84 69x97 122x159 66x69 111x118 165x86 71x83 " +
            "163x162 67x132 121x152 68x150 138x124 141x105 183x122 171x63 101x64 103x95 110x107 184x158 85x97 86x92 127x155 92x147 " +
            "106x97 177x108 164x150 68x84 62x151 123x134 158x178 70x140 173x117 147x136 141x145 84x164 144x141 92x103 156x98 " +
            "160x111 127x131"),
        ByArea("gcut5", 500, 246000, 246000,
            "198x205 179x155 364x236 272x147 352x145 343x245 132x174 164x250 282x356 342x151"),
        ByArea("gcut6", 500, 238998, 240951,
            "313x305 292x222 330x253 212x256 132x189 149x296 294x137 225x345 345x220 337x177 189x300 234x321 335x272 354x244 " +
            "149x169 355x165 260x220 210x241 194x372 287x134"),
        ByArea("gcut7", 500, 242567, 245866,
            "348x220 255x184 191x249 212x194 348x322 171x369 206x327 221x277 250x202 205x226 193x280 364x311 264x224 244x347 " +
            "270x338 224x236 168x177 285x347 315x294 247x219 315x302 129x147 268x273 350x352 186x258 365x374 145x259 284x184 " +
            "129x198 146x351"),
        ByArea("gcut8", 500, 246633, 247787,
            "277x242 233x177 182x216 147x134 213x127 315x212 261x175 210x281 243x256 159x314 217x147 260x349 222x199 296x127 " +
            "263x302 226x250 264x344 237x179 245x137 137x328 321x154 200x174 270x128 299x179 165x370 198x182 155x295 278x219 " +
            "184x155 187x270 208x293 261x204 344x168 213x135 362x162 362x374 237x322 281x308 155x344 210x163 325x225 360x225 " +
            "346x347 131x144 284x284 262x228 146x178 254x164 332x238 313x304"),
        ByArea("gcut9", 1000, 971100, 971100,
            "310x426 673x468 426x463 325x498 555x540 292x455 343x341 362x491 305x688 459x607"),
        ByArea("gcut10", 1000, 982025, 982025,
            "730x300 269x717 463x369 642x464 453x329 455x667 506x482 560x362 483x260 693x345 381x510 456x586 457x453 707x658 " +
            "639x650 691x359 434x700 576x291 728x739 545x742"),
        ByArea("gcut11", 1000, 980096, 980096,
            "541x745 344x301 413x294 266x341 543x388 367x701 526x707 286x706 614x289 348x592 673x431 475x362 562x439 530x638 " +
            "609x375 540x274 486x634 272x377 623x306 266x714 341x336 340x296 531x479 571x589 674x496 560x497 509x389 650x332 " +
            "474x285 419x503"),
        ByArea("gcut12", 1000, 979986, 988694,
            "572x665 482x640 264x594 349x566 276x660 745x422 434x622 446x433 668x506 405x635 486x320 554x549 392x491 459x528 " +
            "426x579 728x359 644x465 382x323 268x352 324x512 277x426 254x685 483x532 678x414 546x590 716x640 542x400 634x596 " +
            "497x696 417x300 290x605 321x520 543x290 599x269 467x679 583x421 729x723 465x590 614x585 446x327 734x616 479x606 " +
            "656x278 537x355 604x519 746x596 439x281 339x405 273x526 625x568"),
        ByArea("gcut13", 3000, 8997780, 9000000,
            "365x185 378x200 410x165 425x148 425x296 439x116 464x1006 520x205 520x350 540x530 549x1413 549x1882 553x496 555x755 " +
            "555x496 555x659 567x473 572x592 572x975 572x1175 572x1575 572x1390 572x1490 572x1590 572x1690 572x1890 610x625 660x490 " +
            "690x447 949x445 949x478 970x463"),
    ];

    /// <summary>
    /// cgcut1 to cgcut3: N. Christofides and C. Whitlock, Oper. Res. 25 (1977) 30-44, limited copies; data as above. The optima are those
    /// given in the literature, as they stand.
    /// </summary>
    public static readonly PublishedSheet[] Limited1977 =
    [
        Listed("cgcut1", 15, 10, 244, 260,
            "8x4*2=66 3x7*1=35 8x2*3=24 3x4*5=17 3x3*2=11 3x2*2=8 2x1*1=2"),
        Listed("cgcut2", 40, 70, 2892, null,
            "21x22*1=582 31x13*1=403 9x35*3=315 9x24*3=216 30x7*2=210 11x13*3=143 10x14*1=140 14x8*3=110 12x8*3=94 13x7*3=90"),
        Listed("cgcut3", 40, 70, 1860, null,
            "31x43*4=500 30x41*2=480 29x39*4=460 28x38*4=440 27x37*3=420 26x36*4=410 25x35*3=400 24x34*4=380 33x23*4=360 " +
            "22x32*3=340 31x21*3=320 29x18*3=300 17x27*2=280 15x24*2=240 16x25*4=260 15x24*1=240 23x14*4=220 21x12*3=180 " +
            "19x11*4=160 9x17*1=140"),
    ];

    /// <summary>
    /// ngcut1 to ngcut12: J. E. Beasley, Oper. Res. 33 (1985) 49-64, limited copies; data as above. The optima were published for any cuts
    /// (www.ibr.cs.tu-bs.de/alg/packlib/article/b-etdng-85.shtml) and are reached from edge to edge.
    /// </summary>
    public static readonly PublishedSheet[] Limited1985 =
    [
        Listed("ngcut1", 10, 10, 164, null,
            "3x7*2=35 8x2*2=40 10x2*1=27 5x4*3=23 2x9*2=43"),
        Listed("ngcut2", 10, 10, 230, null,
            "1x10*3=28 5x3*2=40 9x3*3=63 6x1*3=13 3x8*3=31 4x1*1=10 7x3*2=44"),
        Listed("ngcut3", 10, 10, 247, null,
            "3x2*2=7 7x2*3=20 4x5*2=60 4x1*2=9 1x10*1=14 8x4*1=79 4x2*2=11 3x7*3=52 6x2*3=13 9x1*2=21"),
        Listed("ngcut4", 15, 10, 268, null,
            "15x2*2=34 7x3*1=27 9x1*1=14 8x3*1=71 12x2*2=61"),
        Listed("ngcut5", 15, 10, 358, null,
            "10x3*2=34 9x3*1=48 12x2*3=72 11x3*1=91 12x3*3=37 11x1*3=15 2x10*1=36"),
        Listed("ngcut6", 15, 10, 289, null,
            "2x9*1=50 10x2*3=29 2x4*1=11 2x8*2=30 3x8*1=46 4x1*1=7 6x4*3=32 10x3*1=74 11x2*1=48 4x5*1=32"),
        Listed("ngcut7", 20, 20, 430, null,
            "1x9*3=26 16x3*1=113 18x3*1=127 20x2*1=104 3x1*2=4"),
        Listed("ngcut8", 20, 20, 834, null,
            "15x3*1=110 6x6*3=93 13x1*2=38 8x7*2=144 18x5*3=185 12x4*1=78 8x3*1=25"),
        Listed("ngcut9", 20, 20, 924, null,
            "14x2*1=45 1x5*1=10 20x4*2=139 12x3*3=92 11x8*2=145 11x6*2=123 7x9*1=166 17x5*1=252 7x14*2=161 1x7*3=12"),
        Listed("ngcut10", 30, 30, 1452, null,
            "1x30*3=75 25x7*1=279 27x9*3=409 30x2*3=65 26x7*3=235"),
        Listed("ngcut11", 30, 30, 1688, null,
            "3x23*3=118 29x5*1=244 21x2*3=81 17x11*3=371 14x7*2=254 8x5*2=78 21x8*1=293"),
        Listed("ngcut12", 30, 30, 1865, null,
            "16x6*1=132 24x1*3=29 6x28*3=351 8x23*3=275 5x1*3=10 6x26*2=259 2x30*2=110 9x11*3=240 4x30*1=265 16x13*1=507"),
    ];

    private static PublishedSheet ByArea(string name, int side, int best, int bestTurned, string pieces) => new(name, side, side,
        [.. from piece in pieces.Split(' ')
            let sides = piece.Split('x').Select(Number).ToArray()
            select (sides[0], sides[1], Unlimited, sides[0] * sides[1])], best, bestTurned);

    private static PublishedSheet Listed(string name, int width, int height, int best, int? bestTurned, string pieces) =>
        new(name, width, height,
        [.. from piece in pieces.Split(' ')
            let numbers = piece.Split('x', '*', '=').Select(Number).ToArray()
            select (numbers[0], numbers[1], numbers[2], numbers[3])], best, bestTurned);

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
