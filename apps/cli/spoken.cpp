#include "apps/cli/spoken.h"

#include "words/say.h"

namespace lastegg::cli {

std::string spoken(const std::string& word) {
  for (const char* known :
       {to_say("lethal"),      to_say("short"),         to_say("not_proven"),  to_say("not proven"),
        to_say("barred"),      to_say("not_treated"),   to_say("not treated"), to_say("yes"),
        to_say("no"),          to_say("unchanged"),     to_say("weaker"),      to_say("stronger"),
        to_say("open"),        to_say("explained"),     to_say("none"),        to_say("allowed"),
        to_say("needs check"), to_say("needs consent"), to_say("damp"),        to_say("wet"),
        to_say("within"),      to_say("refused"),       to_say("people"),      to_say("machine"),
        to_say("vacuum"),      to_say("dryer"),         to_say("circuit"),     to_say("egg"),
        to_say("nymph"),       to_say("adult"),         to_say("measured"),    to_say("handbook"),
        to_say("practice"),    to_say("estimate"),      to_say("from memory")})
    if (word == known) return in_language(known);
  return word;
}

}  // namespace lastegg::cli
