//! What the entries of the survey are called, and how to take them.

use crate::field::SurveyField;

names! {
/// What an entry of the survey is called.
SurveyName of SurveyField {
    NominalSize = "Nominal size" / "Tamaño nominal" / "Taille nominale",
    InsideDiameter = "Inside diameter" / "Diámetro interior" / "Diamètre intérieur",
    Circumference = "Round the bare shell" / "Alrededor de la virola desnuda" / "Autour de la virole nue",
    Wall = "Wall" / "Pared" / "Paroi",
    MeteredVolume = "Water let in" / "Agua introducida" / "Eau introduite",
    BagVolume = "Volume of the bag" / "Volumen de la bolsa" / "Volume du sac",
    TapeBefore = "Tape before" / "Cinta antes" / "Ruban avant",
    TapeAfter = "Tape after" / "Cinta después" / "Ruban après",
    InsideDepth = "Inside depth" / "Profundidad interior" / "Profondeur intérieure",
    ConeDepth = "Depth of the cone" / "Altura del cono" / "Hauteur du cône",
    NeckHeight = "Neck height" / "Altura del cuello" / "Hauteur du col",
    ClearBore = "Clear bore" / "Paso libre" / "Passage libre",
    RiserOutsideDiameter = "Riser outside diameter"
        / "Diámetro exterior del tubo central"
        / "Diamètre extérieur du tube central",
    RiserSeat = "Riser stands at height"
        / "El tubo central se apoya a la altura"
        / "Le tube central repose à la hauteur",
    RiserAllowance = "Valve wants it above the rim by"
        / "La válvula lo quiere sobre el borde en"
        / "La vanne le veut au-dessus du bord de",
    CollectorDiameter = "Collector diameter" / "Diámetro del colector" / "Diamètre du collecteur",
    CollectorBottom = "Collector lower end at height"
        / "Extremo inferior del colector a la altura"
        / "Extrémité basse du collecteur à la hauteur",
    CollectorTop = "Collector upper end at height"
        / "Extremo superior del colector a la altura"
        / "Extrémité haute du collecteur à la hauteur",
    LateralCount = "Number of laterals" / "Número de brazos" / "Nombre de bras",
    LateralLength = "Length of a lateral" / "Largo de un brazo" / "Longueur d’un bras",
    LateralAxis = "Laterals' centre at height" / "Centro de los brazos a la altura" / "Axe des bras à la hauteur",
    TopSlot = "Top slot at height" / "Ranura más alta a la altura" / "Fente la plus haute à la hauteur",
    SlotWidth = "Slot width" / "Ancho de ranura" / "Largeur de fente",
    UpperCollector = "Rim down to the upper collector"
        / "Del borde al colector superior"
        / "Du bord au collecteur supérieur",
}}

hints! {
/// How to take a measure, in a few words, where the name doesn't say it.
SurveyHint of SurveyField {
    NominalSize = "as on the label: 12x52, or 1252"
        / "como en la placa: 12x52, o 1252"
        / "comme sur la plaque : 12x52, ou 1252",
    Circumference = "never over a jacket" / "nunca sobre una funda" / "jamais sur une housse",
    InsideDepth = "rim of the opening to the lowest inside point"
        / "del borde de la abertura al punto interior más bajo"
        / "du bord de l’ouverture au point intérieur le plus bas",
    NeckHeight = "top of the head to the rim" / "de lo alto del fondo al borde" / "du haut du fond au bord",
    RiserOutsideDiameter = "measure across the pipe; names mislead"
        / "mida el tubo a lo ancho; los nombres engañan"
        / "mesurez le tube en travers ; les noms trompent",
    RiserSeat = "its lower end above the lowest inside point"
        / "su extremo inferior sobre el punto interior más bajo"
        / "son extrémité basse au-dessus du point intérieur le plus bas",
    RiserAllowance = "0 if flush; minus if it ends below"
        / "0 si va a ras; menos si acaba por debajo"
        / "0 à fleur ; moins s’il finit au-dessous",
    TapeBefore = "rim down to the surface" / "del borde a la superficie" / "du bord à la surface",
    TapeAfter = "rim down to the surface" / "del borde a la superficie" / "du bord à la surface",
    MeteredVolume = "between the two tape readings"
        / "entre las dos lecturas de cinta"
        / "entre les deux lectures au ruban",
    BagVolume = "as printed, and the bag was full"
        / "como está impreso, y la bolsa estaba llena"
        / "comme imprimé, et le sac était plein",
}}
