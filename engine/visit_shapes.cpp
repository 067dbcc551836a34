#include "engine/visit_shapes.h"

#include "engine/request_values.h"

namespace lastegg {

using namespace shape;

namespace {

std::vector<Field> placed(std::vector<Field> fields) {
  fields.push_back(optional("item", text("name of the item; of the room or home if left out")));
  fields.push_back(optional("room", text("name of the room")));
  return fields;
}

bool bears_on(const Json& stated, const std::string& item, const std::string& room) {
  if (const auto named = text_if(stated, "item")) return *named == item;
  if (const auto named = text_if(stated, "room")) return *named == room;
  return true;
}

}  // namespace

std::vector<Field> circumstance_fields() {
  return {
      optional("risks",
               list(object(placed({field("what", text("a word of the record's kind risk/1, such as pets")),
                                   with_default("settled", flag("dealt with"), false),
                                   optional("settled_by", text("role of who decided or approved"))}),
                           "somebody or something that heat, steam or water could harm"),
                    "risks of the record")
                   .items(0, 400)),
      optional("consents", list(object(placed({field("to", text("a word of the record's kind consent/1")),
                                               field("answer", choice({{"given", "agreed"},
                                                                       {"refused", "not agreed"},
                                                                       {"not_asked", "not asked yet"}},
                                                                      "the answer"))}),
                                       "what was asked of the client"),
                                "consents of the record")
                               .items(0, 400)),
      optional("prior_treatments",
               list(text("a word of the record's kind prior_treatment/1"), "what was tried before")
                   .items(0, 100))};
}

void read_circumstances(const Json& request, const std::string& item, const std::string& room,
                        method_choice::Situation& situation) {
  if (const Json* risks = member_if(request, "risks")) {
    for (const Json& stated : *risks) {
      if (!bears_on(stated, item, room)) continue;
      const method_choice::Risk risk{stated.at("settled").get<bool>(),
                                     text_if(stated, "settled_by").value_or("")};
      // Of several of one kind the one that is not settled counts.
      const auto [known, fresh] = situation.risks.emplace(text_of(stated, "what"), risk);
      if (!fresh && known->second.settled && (!risk.settled || risk.settled_by.empty())) known->second = risk;
    }
  }
  if (const Json* consents = member_if(request, "consents")) {
    for (const Json& stated : *consents) {
      if (!bears_on(stated, item, room)) continue;
      const std::string answer = text_of(stated, "answer");
      const method_choice::Answer read = answer == "given"     ? method_choice::Answer::given
                                         : answer == "refused" ? method_choice::Answer::refused
                                                               : method_choice::Answer::not_asked;
      const auto [known, fresh] = situation.consents.emplace(text_of(stated, "to"), read);
      // A refusal stays; otherwise what was given counts.
      if (!fresh && known->second != method_choice::Answer::refused &&
          read != method_choice::Answer::not_asked)
        known->second = read;
    }
  }
  if (const Json* prior = member_if(request, "prior_treatments"))
    for (const Json& what : *prior) situation.prior.insert(what.get<std::string>());
}

Shape method_word(std::string text) {
  std::vector<Choice> words;
  for (const method_choice::Method& method : method_choice::methods())
    words.push_back({method.key, method.title});
  return choice(std::move(words), std::move(text));
}

Shape sourced_text(std::string text) {
  return object(
      {field("code", shape::text("what it is, for programs")), field("text", shape::text("in words")),
       field("source", shape::text("key of the bibliography, or how it was judged")),
       field("locator", shape::text("where in it")),
       field("quality", shape::text("measured, handbook, practice, estimate, from memory"))},
      std::move(text));
}

std::string_view standing_word(method_choice::Standing standing) {
  switch (standing) {
    case method_choice::Standing::allowed:
      return "allowed";
    case method_choice::Standing::needs_check:
      return "needs_check";
    case method_choice::Standing::needs_consent:
      return "needs_consent";
    case method_choice::Standing::barred:
      break;
  }
  return "barred";
}

Shape standing_shape() {
  return choice({{"allowed", "nothing stands against it"},
                 {"needs_check", "something has to be looked at first"},
                 {"needs_consent", "somebody has to agree first"},
                 {"barred", "not used here"}},
                "whether it may be used");
}

}  // namespace lastegg
